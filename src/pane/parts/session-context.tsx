import { createContext, useContext, useSyncExternalStore } from "react";
import type { Session } from "../session/session";
import type { SessionState } from "../session/state";

const SessionContext = createContext<Session | undefined>(undefined);

export const SessionProvider = SessionContext.Provider;

/** The session and what it says now. */
export function useSession(): { readonly session: Session; readonly state: SessionState } {
  const session = useContext(SessionContext);
  if (!session) throw new Error("a screen stands outside its session");
  return { session, state: useSyncExternalStore(session.subscribe, session.getState) };
}
