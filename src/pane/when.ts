/** A time as the log says it, in local time. @example "2026-11-25 09:40" */
export function logTime(time: Date): string {
  const two = (figure: number) => String(figure).padStart(2, "0");
  const day = [time.getFullYear(), two(time.getMonth() + 1), two(time.getDate())].join("-");
  return `${day} ${two(time.getHours())}:${two(time.getMinutes())}`;
}

/** Its day alone. */
export const logDay = (time: Date): string => logTime(time).slice(0, 10);
