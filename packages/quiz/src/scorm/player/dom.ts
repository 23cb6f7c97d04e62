/** Elements, made. Texts go in as texts, never as markup, and handlers by name, so that any content security policy lets them be. */
type Child = Node | string;
type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

export function h<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    element.setAttribute(key, value === true ? "" : String(value));
  }
  element.append(...children);
  return element;
}

export function button(text: string, press: () => void, kind = "main"): HTMLButtonElement {
  const made = h("button", { type: "button", class: kind }, text);
  made.addEventListener("click", press);
  return made;
}

/** A text of the player with what stands in braces put in. */
export const fill = (text: string, values: Readonly<Record<string, string | number>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
