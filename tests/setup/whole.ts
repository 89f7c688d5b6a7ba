/** Whether the whole of a long test is wanted: `npm run fuzz` does all of it, `npm test` a share. */
export const whole = process.env.npm_lifecycle_event === "fuzz";
