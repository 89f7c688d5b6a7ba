import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/** The width of an element in CSS pixels, followed as the pane is drawn wider or narrower. */
export function useWidth<T extends HTMLElement>(
  usual: number,
): readonly [RefObject<T | null>, number] {
  const element = useRef<T>(null);
  const [width, setWidth] = useState(usual);
  useLayoutEffect(() => {
    const { current } = element;
    if (!current) return;
    const measure = () => setWidth(Math.max(200, Math.floor(current.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
