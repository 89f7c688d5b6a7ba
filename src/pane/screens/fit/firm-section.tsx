import type { Job } from "../../../job";
import { useShared } from "../../parts/styles";

/** Reasons shown beside one role. */
const mostReasons = 2;

/** Sheets that a firm laid out itself, as they were read: which cells were taken for what, and why. */
export function FirmSection({ job }: { job: Job }) {
  const shared = useShared();
  if (!job.firm) return null;
  const { blocks, notRead } = job.firm.reading;
  return (
    <section className={shared.stack}>
      <h3 className={shared.subheading}>Read as the firm keeps it</h3>
      {blocks.map((block) => (
        <div key={`${block.sheet} ${block.layout} ${block.fans[0] ?? ""}`}>
          <p className={shared.text}>
            Sheet {block.sheet}: {block.readings} readings, {block.layout}
          </p>
          <table className={shared.table}>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Why</th>
              </tr>
            </thead>
            <tbody>
              {[...block.roles].map(([role, { evidence }]) => (
                <tr key={role}>
                  <th scope="row">{role}</th>
                  <td>
                    {[
                      ...new Set(
                        evidence.filter(({ weight }) => weight > 0).map(({ because }) => because),
                      ),
                    ]
                      .slice(0, mostReasons)
                      .join("; ")}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ))}
      {notRead.map(({ because }) => (
        <p key={because} className={shared.muted}>
          {because}
        </p>
      ))}
    </section>
  );
}
