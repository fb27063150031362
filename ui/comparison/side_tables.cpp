#include "ui/comparison/side_tables.h"

#include "core/text/name_suggestions.h"
#include "ui/words/words.h"

namespace holdband::ui {

namespace {

/// "³" for 3, as a footnote mark.
QString raised(std::size_t number)
{
    static const QString digits = QStringLiteral("⁰¹²³⁴⁵⁶⁷⁸⁹");
    QString text;
    for (const QChar digit : QString::number(number))
        text += digits[digit.digitValue()];
    return text;
}

struct Touching {
    QString marks; ///< " ¹ ³"; empty without notes
    QStringList words;
};

Touching notesOn(const results::SideBySide& comparison, const std::string& title)
{
    Touching touching;
    for (std::size_t i = 0; i < comparison.text.notes.size(); ++i) {
        const results::NoteText& note = comparison.text.notes[i];
        if (note.title != title)
            continue;
        touching.marks += QLatin1Char(' ') + raised(i + 1);
        touching.words << capitalised(shown(note.note)) + QStringLiteral(": ") +
                              shown(note.effect) + QLatin1Char('.');
    }
    return touching;
}

} // namespace

TableText measuresTable(const results::SideBySide& comparison)
{
    TableText table;
    table.header = {Words::tr("Measure"),    QStringLiteral("A"),     QStringLiteral("B"),
                    QStringLiteral("A − B"), QStringLiteral("A ÷ B"), Words::tr("ahead")};
    table.numeric = {false, true, true, true, true, false};
    for (std::size_t i = 0; i < comparison.measures.size(); ++i) {
        const results::MeasureText& line = comparison.text.measures[i];
        const Touching notes = notesOn(comparison, line.title);
        const QString why = capitalised(shown(line.remark));
        table.rows.push_back(
            {{shown(line.title) + notes.marks, notes.words.join(QLatin1Char('\n')), false},
             {shown(line.a), {}, false},
             {shown(line.b), {}, false},
             // Its bounds follow from those of A and B; the tooltip has them.
             {shown(line.differenceOnly), shown(line.difference), false},
             {shown(line.ratio), {}, false},
             {shown(line.ahead), why, isDecided(comparison.measures[i].ahead)}});
    }
    return table;
}

QString batchesThatCount(const results::SideBySide& comparison)
{
    if (!comparison.ofSetups)
        return Words::tr("In brackets: minimum – maximum of the figure.") +
               (comparison.text.scope.empty() ? QString()
                                              : QLatin1Char(' ') + shown(comparison.text.scope));
    return Words::tr("%1: %2. %3: %4. In brackets: 95 % interval of the mean of many such batches.")
        .arg(shown(comparison.a), shown(joined(comparison.batchesA)), shown(comparison.b),
             shown(joined(comparison.batchesB)));
}

QStringList fairnessNotes(const results::SideBySide& comparison)
{
    QStringList notes;
    for (const results::NoteText& note : comparison.text.notes)
        notes << QStringLiteral("%1 · %2: %3.")
                     .arg(QString::number(notes.size() + 1), capitalised(shown(note.note)),
                          shown(note.effect));
    return notes;
}

QString weatherDetails(const results::SideBySide& comparison)
{
    QStringList lines;
    const results::SameWeatherText& weather = comparison.text.weather;
    for (const bool first : {true, false}) {
        const results::SideModelText& side = first ? weather.a : weather.b;
        const QStringList own =
            sentences(side.figures) + sentences(side.cautions) + sentences(side.remarks);
        if (!own.isEmpty())
            lines << shown(first ? comparison.a : comparison.b) + QStringLiteral(": ") +
                         own.join(QLatin1Char(' '));
    }
    lines << sentences(weather.remarks);
    return lines.join(QLatin1Char('\n'));
}

QStringList sentences(const std::vector<std::string>& lines)
{
    QStringList all;
    for (const std::string& line : lines) {
        if (!line.empty())
            all << capitalised(shown(line)) +
                       (line.ends_with('.') ? QString() : QStringLiteral("."));
    }
    return all;
}

} // namespace holdband::ui
