/** Asks for an event, once nobody is typing in a cell, and gives the function by which it is given up again. */
export async function listen<T>(
  add: (context: Excel.RequestContext) => OfficeExtension.EventHandlerResult<T>
): Promise<() => Promise<void>> {
  const registration = await Excel.run({ delayForCellEdit: true }, async (context) => {
    const added = add(context)
    await context.sync()
    return added
  })
  return () =>
    Excel.run(registration.context as Excel.RequestContext, async (context) => {
      registration.remove()
      await context.sync()
    })
}
