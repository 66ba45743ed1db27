interface Props {
  readonly label: string;
  readonly ticked: boolean;
  readonly onTick: (ticked: boolean) => void;
}

/** Yes or no. The whole line can be touched. */
export const TickField = ({ label, ticked, onTick }: Props) => (
  <label className="tick">
    <input type="checkbox" checked={ticked} onChange={(event) => onTick(event.target.checked)} />
    {label}
  </label>
);
