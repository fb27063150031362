// DuckDB beside the program, on one thread. Needs the npm package @duckdb/node-api beside this file.
//   node duckdb.mjs import LOG DATABASE       read_csv and unpivot into a file
//   node duckdb.mjs verdict DATABASE OUT RUNS  seconds of the query alone, the data in memory
import { DuckDBInstance } from '@duckdb/node-api';
import { writeFileSync } from 'node:fs';

const importLog = `
CREATE TABLE long AS SELECT name AS sensor, epoch_ms(Logged) AS instant, value FROM (
    UNPIVOT (SELECT * FROM read_csv('LOG', header = true, timestampformat = '%Y-%m-%d %H:%M',
        columns = {'Logged': 'TIMESTAMP', 'Vessel (F)': 'DOUBLE', 'Air (F)': 'DOUBLE',
                   'Room (F)': 'DOUBLE'}))
    ON "Vessel (F)", "Air (F)", "Room (F)")`;

const verdict = `
WITH pieces AS (
    SELECT instant, value - 66 AS d, lead(instant) OVER w AS next_instant,
           lead(value) OVER w - 66 AS next_d
    FROM long WHERE sensor = 'Vessel (F)' WINDOW w AS (ORDER BY instant))
SELECT sum(CASE WHEN abs(d) <= 3 AND abs(next_d) <= 3 THEN next_instant - instant ELSE 0 END),
       sum(next_instant - instant), max(abs(d)), sum((d + next_d) / 2 * (next_instant - instant))
FROM pieces WHERE next_instant - instant <= 900000`;

const [act, from, to, runs] = process.argv.slice(2);
const instance = await DuckDBInstance.create(act === 'import' ? to : ':memory:', { threads: '1' });
const connection = await instance.connect();
if (act === 'import') {
    await connection.run(importLog.replace('LOG', from));
    await connection.run('CHECKPOINT');
} else {
    await connection.run(`ATTACH '${from}' AS file (READ_ONLY)`);
    await connection.run('CREATE TABLE long AS SELECT * FROM file.long');
    const seconds = [];
    for (let i = 0; i < Number(runs); ++i) {
        const start = performance.now();
        await (await connection.run(verdict)).getRows();
        seconds.push((performance.now() - start) / 1000);
    }
    writeFileSync(to, seconds.join('\n') + '\n');
}
connection.closeSync();
