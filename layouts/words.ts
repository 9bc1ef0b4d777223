/** Numbers, times, dates and lists as they are written on a page. */

/** Minutes as "5 min", "2 h", "2 h 30 min", "3 days" (whole days from two on). */
export function duration(minutes: number): string {
  if (minutes >= 2880 && minutes % 1440 === 0) return `${minutes / 1440} days`;
  const hours = Math.floor(minutes / 60);
  const rest = Math.round((minutes - hours * 60) * 10) / 10;
  return [hours > 0 && `${hours} h`, (rest > 0 || hours === 0) && `${rest} min`].filter(Boolean).join(" ");
}

/** "1 step", "3 steps". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  return items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** "steps 3, 4 and 7"; "step 3". */
export function stepNumbers(numbers: readonly number[]): string {
  return `${numbers.length === 1 ? "step" : "steps"} ${listed(numbers.map(String))}`;
}

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** "2026-11-20" as "20 November 2026"; what is not such a date stays as it is. */
export function date(iso: string): string {
  const match = /^(\d{4})-(\d\d)-(\d\d)$/.exec(iso);
  const month = months[Number(match?.[2]) - 1];
  return match === null || month === undefined ? iso : `${Number(match[3])} ${month} ${match[1]}`;
}

/** With a capital letter first. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Ends a phrase as a sentence, unless it ends as one already. */
export function sentence(text: string): string {
  return /[.!?…]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
}
