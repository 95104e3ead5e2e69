/** Processor time of the whole process so far [µs]: what else the machine does hardly touches it. */
export function processorUs(): number {
  const { user, system } = process.cpuUsage()
  return user + system
}
