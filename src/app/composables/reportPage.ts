export const reportHtml = (..._: unknown[]): Promise<string> => Promise.reject(new Error('waiting'))
