/** What can hurt someone, in short. */
export function Cautions() {
  return (
    <section aria-labelledby="canfall-cautions">
      <h2 id="canfall-cautions">Before you test</h2>
      <ul>
        <li>
          Recycled water: sprinklers make aerosols that people breathe in. Stand upwind and follow the site's rules.
        </li>
        <li>Never test while fertiliser or chemicals are injected, and keep the backflow preventer in place.</li>
        <li>Pumps and electricity: isolate before opening anything; lines and fittings may be under pressure.</li>
        <li>The ground gets wet and slippery, and so do cans and bench tops.</li>
      </ul>
      <p className="note">
        Results support a decision; they are no design certificate. Local rules and licensed people come first.
      </p>
    </section>
  );
}
