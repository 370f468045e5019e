// Reads lines "2025-08-31 6" and answers each with the day that date-fns gets by adding the months.
import { createInterface } from "node:readline";
import { addMonths, format, parseISO } from "date-fns";

for await (const line of createInterface({ input: process.stdin })) {
  const [day, months] = line.split(" ");
  console.log(format(addMonths(parseISO(day), Number(months)), "yyyy-MM-dd"));
}
