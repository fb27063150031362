// Histories as stored by older versions: a file of an old format, and every sentence they wrote.
#pragma once

#include "core/store/safety/seal.h"
#include "core/store/sqlite/schema.h"

#include <array>
#include <gtest/gtest.h>
#include <span>
#include <string>

namespace holdband::test {

struct OldSentence {
    const char* stored;
    const char* english; ///< as it is shown now
    const char* german;
};

inline constexpr std::array oldSentences{
    OldSentence{"made the logbook", "created the logbook", "Logbuch angelegt"},
    OldSentence{"loaded garage.json", "loaded garage.json", "garage.json geladen"},
    OldSentence{"remembered columns", "saved how the columns of a log are read",
                "Spaltenzuordnung eines Protokolls gespeichert"},
    OldSentence{"weighed two arrangements", "changed how setups are weighed",
                "Gewichtung der Anlagen geändert"},
    OldSentence{"units, zone or currency changed", "changed units, time zone or currency",
                "Einheiten, Zeitzone oder Währung geändert"},
    OldSentence{"rounds changed", "changed the rounds", "Rundgänge geändert"},
    OldSentence{"price of energy changed", "changed the price of energy", "Energiepreis geändert"},
    OldSentence{"noted something", "added a note", "Notiz hinzugefügt"},
    OldSentence{"noted something of Pale 3", "added a note to Pale 3",
                "Notiz zu Pale 3 hinzugefügt"},
    OldSentence{"changed a note", "changed a note", "Notiz geändert"},
    OldSentence{"changed a note of Pale 3", "changed a note of Pale 3", "Notiz zu Pale 3 geändert"},
    OldSentence{"removed a note", "deleted a note", "Notiz gelöscht"},
    OldSentence{"removed a note of Pale 3", "deleted a note of Pale 3", "Notiz zu Pale 3 gelöscht"},
    OldSentence{"typed a round", "saved a round", "Rundgang gespeichert"},
    OldSentence{"typed a round of 1 reading", "saved a round of 1 reading",
                "Rundgang mit 1 Messwert gespeichert"},
    OldSentence{"typed a round of 12 readings", "saved a round of 12 readings",
                "Rundgang mit 12 Messwerten gespeichert"},
    OldSentence{"corrected a reading of Coil", "corrected a reading of Coil",
                "Messwert von Coil berichtigt"},
    OldSentence{"corrected a gravity of Pale 3", "corrected a gravity of Pale 3",
                "Dichte von Pale 3 berichtigt"},
    OldSentence{"changed the note of a reading of Coil", "changed the note of a reading of Coil",
                "Notiz zu einem Messwert von Coil geändert"},
    OldSentence{"changed the note of a gravity of Pale 3",
                "changed the note of a gravity of Pale 3",
                "Notiz zu einer Dichte von Pale 3 geändert"},
    OldSentence{"took away a reading of Coil", "deleted a reading of Coil",
                "Messwert von Coil gelöscht"},
    OldSentence{"took away a gravity of Pale 3", "deleted a gravity of Pale 3",
                "Dichte von Pale 3 gelöscht"},
    OldSentence{"took away 3 readings of Coil", "deleted 3 readings of Coil",
                "3 Messwerte von Coil gelöscht"},
    OldSentence{"brought back a reading of Coil", "restored a reading of Coil",
                "Messwert von Coil wiederhergestellt"},
    OldSentence{"brought back 2 readings of Coil", "restored 2 readings of Coil",
                "2 Messwerte von Coil wiederhergestellt"},
    OldSentence{"left out a stretch of Beer", "left out a stretch of Beer",
                "Zeitraum von Beer ausgelassen"},
    OldSentence{"brought back a stretch of Beer", "restored a stretch of Beer",
                "Zeitraum von Beer wiederhergestellt"},
    OldSentence{"rows of the watched loop.csv", "added new rows of loop.csv",
                "neue Zeilen von loop.csv hinzugefügt"},
    OldSentence{"watched loop.csv", "started watching loop.csv",
                "Überwachung von loop.csv begonnen"},
    OldSentence{"watched no longer: loop.csv", "stopped watching loop.csv",
                "Überwachung von loop.csv beendet"},
    OldSentence{"imported loop.csv", "imported loop.csv", "loop.csv importiert"},
    OldSentence{"took back loop.csv", "withdrew loop.csv", "loop.csv zurückgezogen"},
    OldSentence{"put back loop.csv", "restored loop.csv", "loop.csv wiederhergestellt"},
    OldSentence{"set up Beer", "added Beer", "Beer hinzugefügt"},
    OldSentence{"plan House kept", "saved plan House", "Plan House gespeichert"},
    OldSentence{"plan House removed", "removed plan House", "Plan House entfernt"},
    OldSentence{"setup Loop added", "added setup Loop", "Anlage Loop hinzugefügt"},
    OldSentence{"setup Loop changed", "changed setup Loop", "Anlage Loop geändert"},
    OldSentence{"setup Loop removed", "removed setup Loop", "Anlage Loop entfernt"},
    OldSentence{"setup Loop retired", "retired setup Loop", "Anlage Loop ausgemustert"},
    OldSentence{"setup Loop brought back", "restored setup Loop",
                "Anlage Loop wieder in Gebrauch genommen"},
    OldSentence{"sensor Beer added", "added sensor Beer", "Sensor Beer hinzugefügt"},
    OldSentence{"sensor Beer changed", "changed sensor Beer", "Sensor Beer geändert"},
    OldSentence{"sensor Beer removed", "removed sensor Beer", "Sensor Beer entfernt"},
    OldSentence{"sensor Beer retired", "retired sensor Beer", "Sensor Beer ausgemustert"},
    OldSentence{"sensor Beer brought back", "restored sensor Beer",
                "Sensor Beer wieder in Gebrauch genommen"},
    OldSentence{"meter Coil added", "added meter Coil", "Zähler Coil hinzugefügt"},
    OldSentence{"meter Coil changed", "changed meter Coil", "Zähler Coil geändert"},
    OldSentence{"meter Coil removed", "removed meter Coil", "Zähler Coil entfernt"},
    OldSentence{"meter Coil retired", "retired meter Coil", "Zähler Coil ausgemustert"},
    OldSentence{"meter Coil brought back", "restored meter Coil",
                "Zähler Coil wieder in Gebrauch genommen"},
    OldSentence{"Coil 2 took the place of Coil", "replaced Coil with Coil 2",
                "Coil durch Coil 2 ersetzt"},
    OldSentence{"Pale 3: cause of the excursion of 7 Mar 06:30",
                "set the cause of the excursion of Pale 3 on 7 Mar 06:30",
                "Ursache der Bandverletzung von Pale 3 am 7 Mar 06:30 angegeben"},
    OldSentence{"Pale 3: limits changed", "changed the limits of Pale 3",
                "Grenzen von Pale 3 geändert"},
    OldSentence{"Pale 3: changed", "changed batch Pale 3", "Sud Pale 3 geändert"},
    OldSentence{"Pale 3: removed", "removed batch Pale 3", "Sud Pale 3 entfernt"},
    OldSentence{"Pale 3: pitched", "pitched Pale 3", "Pale 3 angestellt"},
    OldSentence{"Pale 3: reopened", "reopened batch Pale 3", "Sud Pale 3 wieder geöffnet"},
    OldSentence{"Pale 3: ended", "ended batch Pale 3", "Sud Pale 3 beendet"},
    OldSentence{"Pale 3: Hold ended", "ended Hold of Pale 3", "Hold von Pale 3 beendet"},
};

/// A sealed file of an old format whose history holds these rows, VALUES (…), (…).
inline void makeOldHistory(const std::string& path, int format, const std::string& columns,
                           const std::string& rows)
{
    const auto database = store::Database::open(path, store::Access::write, true);
    ASSERT_TRUE(database);
    ASSERT_TRUE(store::migrate(
        **database, std::span(store::schemaSteps()).first(static_cast<std::size_t>(format))));
    const Done filled =
        (*database)->execute("INSERT INTO settings VALUES ('zone', 'UTC'), ('units', 'metric'), "
                             "('currency', ''); INSERT INTO acts (" +
                             columns + ") VALUES " + rows);
    ASSERT_TRUE(filled) << filled.error().sentence();
    ASSERT_TRUE(store::renewSeal(**database));
}

/// All old sentences, oldest first, in a file of the first format.
inline void makeFirstFormat(const std::string& path)
{
    std::string rows;
    for (const OldSentence& each : oldSentences)
        rows += std::string(rows.empty() ? "" : ", ") + "(1772900000000, '" + each.stored + "')";
    makeOldHistory(path, 1, "at, what", rows);
}

} // namespace holdband::test
