/** The pressure to aim for, Pa: inside the 3 to 6 Pa where the manometer's limit hurts least. */
export const aimedPressure = 4;

/** The same in a window that may leave it out: then the middle of the window by ratio, as flows lie. */
export const aimIn = ({ low, high }: { readonly low: number; readonly high: number }): number =>
  low < aimedPressure && aimedPressure < high ? aimedPressure : Math.sqrt(low * high);
