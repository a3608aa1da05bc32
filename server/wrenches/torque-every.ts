/** No eye follows figures that change more often, s. */
const TORQUE_EVERY_S = 0.05;

/** Whether a sample is to be shown: at most one in each twentieth of a second of its pull. */
export function torqueEvery(): (pull: number, elapsedS: number) => boolean {
  let told = -1;
  return (pull, elapsedS) => {
    const frame = pull * 1e6 + Math.floor(elapsedS / TORQUE_EVERY_S);
    const isDue = told !== frame;
    told = frame;
    return isDue;
  };
}
