import { Arguments, ObjectArgument } from "./arguments";
import { HostError, invalidArgument } from "./errors";
import { unknownMember } from "./load";
import { type ArgumentInfo, type Json, type ObjectPath, pathType } from "./messages";
import type { References } from "./references";
import { memberNamed, type Served } from "./served";

/** The roots from which paths start. */
export interface Roots {
  readonly workbook: Served;
  readonly references: References;
}

/** The objects of one request, each made once. */
export class Paths {
  private readonly known = new Map<number, Served | null>();

  constructor(
    private readonly infos: Readonly<Record<string, ObjectPath>>,
    private readonly roots: Roots,
  ) {}

  /** The object at a path; null for one that an OrNullObject method did not find. */
  object(id: number): Served | null {
    const known = this.known.get(id);
    if (known !== undefined) return known;
    const info = this.infos[id];
    if (info === undefined) throw invalidArgument(`The request has no object path ${id}.`);
    const made = this.make(info);
    this.known.set(id, made);
    return made;
  }

  arguments(info: ArgumentInfo | undefined): Arguments {
    const values = info?.Arguments ?? [];
    const ids = info?.ReferencedObjectPathIds;
    return new Arguments(values.map((value, i) => this.argument(value, ids?.[i])));
  }

  /** The class of the object at a path, or the call that was to give it: "WorksheetCollection.getItem". */
  label(id: number): string {
    const info = this.infos[id];
    const known = this.known.get(id);
    if (known) return known.members.className;
    if (info === undefined) return "";
    const parent = info.ParentObjectPathId === undefined ? "" : this.label(info.ParentObjectPathId);
    const call = camel(info.ObjectPathType === pathType.indexer ? "getItem" : info.Name);
    return parent === "" ? call : `${parent}.${call}`;
  }

  private argument(value: Json, pathId: Json | undefined): Json | ObjectArgument {
    if (typeof pathId !== "number" || pathId === 0) return value;
    const object = this.object(pathId);
    if (object === null) throw invalidArgument("An argument is an object that does not exist.");
    return new ObjectArgument(object.self);
  }

  private make(info: ObjectPath): Served | null {
    switch (info.ObjectPathType) {
      case pathType.global:
        return this.roots.workbook;
      case pathType.none:
        return null;
      case pathType.reference: {
        const kept = this.roots.references.get(info.Name);
        if (kept === undefined)
          throw new HostError("InvalidReference", "The object is no longer kept by the host.");
        return kept;
      }
      case pathType.newObject:
        throw new HostError("ApiNotFound", `${info.Name} is not available in this host.`);
      default:
        return this.below(info);
    }
  }

  private below(info: ObjectPath): Served | null {
    const parent = this.object(info.ParentObjectPathId ?? 0);
    // Whatever is asked of an object that is not there is not there either.
    if (parent === null) return null;
    const { members, self } = parent;
    if (info.ObjectPathType === pathType.property) {
      const link = memberNamed(members.links, info.Name);
      if (link === undefined) throw unknownMember(parent, info.Name);
      return link.member(self);
    }
    if (info.ObjectPathType === pathType.indexer) {
      if (members.item === undefined) throw unknownMember(parent, "getItem");
      return members.item(self, this.arguments(info.ArgumentInfo));
    }
    const method = memberNamed(members.methods, info.Name);
    if (method === undefined) throw unknownMember(parent, info.Name);
    return method.member(self, this.arguments(info.ArgumentInfo)) as Served | null;
  }
}

/** "GetRange" as the client spells it: "getRange". */
export function camel(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
