import { kept } from "../../cells";
import type { RoleOrOther } from "../roles";
import type { Evidence, EvidenceKind } from "../types";

/** Evidence by line and role; each entry keeps its kind and its reason. */
export class Ledger {
  private readonly entries = new Map<number, Map<RoleOrOther, Evidence[]>>();

  add(line: number, role: RoleOrOther, kind: EvidenceKind, weight: number, because: string): void {
    if (weight === 0) return;
    const roles = kept(this.entries, line, () => new Map<RoleOrOther, Evidence[]>());
    kept(roles, role, () => []).push({ kind, weight, because });
  }

  of(line: number, role: RoleOrOther): readonly Evidence[] {
    return this.entries.get(line)?.get(role) ?? [];
  }

  weight(line: number, role: RoleOrOther, kind?: EvidenceKind): number {
    let sum = 0;
    for (const entry of this.of(line, role)) if (!kind || entry.kind === kind) sum += entry.weight;
    return sum;
  }
}
