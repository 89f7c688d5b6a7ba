import type { HostRange } from "../host-range";
import { clearRules, readRule, ruleOf, setRule } from "../validations";
import type { Members } from "../wire/served";
import type { Desk } from "./desk";

export function validationMembers(desk: Desk): Members<HostRange> {
  return {
    className: "DataValidation",
    values: {
      type: {
        get(range) {
          const rule = ruleOf(range);
          return rule === undefined ? "Inconsistent" : rule === null ? "None" : "List";
        },
      },
      rule: {
        get: (range) => ruleOf(range) ?? {},
        set(range, value) {
          range.tab.checkWritable();
          setRule(range, readRule(value));
        },
      },
    },
    methods: {
      clear(range) {
        range.tab.checkWritable();
        clearRules(range);
        desk.book.touched({ kind: "layout", sheet: range.tab.name });
      },
    },
  };
}
