// Tables are read as unknown on purpose: only their zod schema may say what they hold.
declare module '#data/*' {
  const table: unknown
  export default table
}
