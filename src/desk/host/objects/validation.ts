import type { HostRange } from "../host-range";
import { readRule, ruleOf, setRule } from "../validations";
import type { Members } from "../wire/served";

export function validationMembers(): Members<HostRange> {
  return {
    className: "DataValidation",
    values: {
      rule: {
        get: (range) => ruleOf(range) ?? {},
        set(range, value) {
          range.tab.checkWritable();
          setRule(range, readRule(value));
        },
      },
    },
  };
}
