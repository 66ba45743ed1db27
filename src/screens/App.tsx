import { tabs } from './tabs.ts';
import { useTab } from './useTab.ts';

/** The clipboard with its four screens. */
export const App = () => {
  const tab = useTab();
  const current = tabs.find(({ id }) => id === tab);
  return (
    <div className="frame">
      <header className="board">
        <nav className="tabs" aria-label="Screens">
          {tabs.map(({ id, label }) => (
            <a key={id} href={`#${id}`} aria-current={id === tab ? 'page' : undefined}>
              {label}
            </a>
          ))}
        </nav>
      </header>
      <main className="sheet">
        <h1 className="unseen">{current?.label}</h1>
      </main>
    </div>
  );
};
