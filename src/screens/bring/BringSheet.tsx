import './bring.css';
import { useState } from 'react';
import { pointOrders, type PointOrder } from '../../importers/csv/pointColumns.ts';
import { fileKind } from '../../importers/fileKind.ts';
import { fileUnits, type FileUnit } from '../../importers/fileUnit.ts';
import { fileUnitWords } from '../../importers/fileUnitWords.ts';
import { phrase } from '../../phrases/phrase.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { SheetOver } from '../frame/SheetOver.tsx';
import { BringFound } from './BringFound.tsx';
import { useFound } from './useFound.ts';

interface Props {
  readonly file: File;
  readonly onDone: () => void;
}

const orderWords: Readonly<Record<PointOrder, string>> = {
  'name, x, y, z, remark': phrase`name, x (east), y (north), z, remark`,
  'name, y, x, z, remark': phrase`name, y (north), x (east), z, remark`,
  'x, y, z, name': phrase`x (east), y (north), z, name`,
  'y, x, z, name': phrase`y (north), x (east), z, name`,
};

const asFile = 'as the file says';

const unitChoices: readonly { readonly value: FileUnit | typeof asFile; readonly label: string }[] =
  [
    { value: asFile, label: phrase`As the file says` },
    ...fileUnits.map((value) => ({ value, label: fileUnitWords[value] })),
  ];

const orderChoices: readonly {
  readonly value: PointOrder | typeof asFile;
  readonly label: string;
}[] = [
  { value: asFile, label: phrase`As it looks` },
  ...pointOrders.map((value) => ({
    value,
    label: orderWords[value],
  })),
];

/** A file that was chosen or dropped: what it has is shown before anything comes onto the pad. */
export const BringSheet = ({ file, onDone }: Props) => {
  const [unit, setUnit] = useState<FileUnit | typeof asFile>(asFile);
  const [order, setOrder] = useState<PointOrder | typeof asFile>(asFile);
  const said = <Value extends string>(value: Value | typeof asFile) =>
    value === asFile ? null : (value as Exclude<Value, typeof asFile>);
  const found = useFound(file, { unit: said(unit), order: said(order) });
  const kind = fileKind(file.name);
  const format = kind.ok ? kind.value : null;
  return (
    <SheetOver title={phrase`Bring in`} onClose={onDone}>
      <div className="bring">
        <p>
          <b>{file.name}</b>
        </p>
        {(format === 'dxf' || format === 'csv') && (
          <div className="pair">
            <ChoiceField
              label={phrase`Numbers are`}
              value={unit}
              choices={unitChoices}
              onChoose={setUnit}
            />
            {format === 'csv' && (
              <ChoiceField
                label={phrase`Columns without headings are`}
                value={order}
                choices={orderChoices}
                onChoose={setOrder}
              />
            )}
          </div>
        )}
        {found === null && <p role="status">{phrase`Reading it…`}</p>}
        {found !== null && !found.ok && (
          <p
            className="fault"
            role="alert"
          >{phrase`${file.name}: ${found.reason}; the drawing is as it was`}</p>
        )}
        {found !== null && found.ok && (
          <BringFound name={file.name} found={found.value} onDone={onDone} />
        )}
      </div>
    </SheetOver>
  );
};
