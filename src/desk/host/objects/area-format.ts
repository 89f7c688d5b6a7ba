import type { CellArea } from "../book";
import { HostRange } from "../host-range";
import type { Members, Property, Served } from "../wire/served";

/**
 * What a class offers for one range, for several at once: a property is set on each, and is null
 * where they differ. `links` are those of the class, made for several ranges as well.
 */
export function ofAreas(
  members: Members<HostRange>,
  links: Readonly<Record<string, (cells: CellArea) => Served>>,
): Members<CellArea> {
  const ranges = ({ tab, rects }: CellArea) => rects.map((rect) => new HostRange(tab, rect));
  const property = ({ get, set }: Property<HostRange>): Property<CellArea> => ({
    get(cells) {
      const [first, ...others] = ranges(cells).map(get);
      return others.every((other) => other === first) ? first : null;
    },
    ...(set && {
      set(cells: CellArea, value: unknown) {
        for (const range of ranges(cells)) set(range, value);
      },
    }),
  });
  const { className, values = {}, methods = {} } = members;
  return {
    className,
    values: Object.fromEntries(
      Object.entries(values).map(([name, value]) => [name, property(value)]),
    ),
    methods: Object.fromEntries(
      Object.entries(methods).map(([name, method]) => [
        name,
        (cells: CellArea, args: Parameters<typeof method>[1]) => {
          for (const range of ranges(cells)) method(range, args);
        },
      ]),
    ),
    links,
  };
}
