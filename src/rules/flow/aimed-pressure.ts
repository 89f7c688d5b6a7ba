/** The pressure to aim for, Pa: inside the 3 to 6 Pa where the manometer's limit hurts least. */
export const aimedPressure = 4;
