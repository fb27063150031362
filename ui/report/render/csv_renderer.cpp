#include "ui/report/render/csv_renderer.h"

#include "core/text/csv_cell.h"
#include "core/text/numbers.h"
#include "ui/words/words.h"

namespace holdband::report {

namespace {

bool isNumber(const QString& text)
{
    return scanDecimal(ui::core(text)).has_value();
}

QString harmless(const QString& text)
{
    return ui::shown(withoutFormula(ui::core(text)));
}

/// The columns that say in the person's words what a value is.
struct Naming {
    QString part;
    QString of;
    QString figure;
};

/// A table without a header is a list of facts: the row's id becomes the figure's.
QString idOf(const Table& table, const Column& column, const Cell& row)
{
    QStringList steps{table.id};
    if (!row.id.isEmpty())
        steps << row.id;
    if (table.headerShown)
        steps << column.id;
    return steps.join(u'.');
}

Naming namingOf(const Table& table, const Column& column, const Cell& row)
{
    const QString rowName = row.raw.isEmpty() ? row.text : row.raw;
    if (!table.headerShown)
        return {table.title, {}, rowName};
    return {table.title, rowName, column.name.isEmpty() ? column.title : column.name};
}

class Lines {
public:
    explicit Lines(const Document& document)
    {
        line({"id", "part", "of", "figure", "value", "unit"});
        text("report.kind", {"report", {}, "kind"}, document.kind);
        text("report.of", {"report", {}, "of"}, document.title);
        for (const Block& block : document.blocks)
            std::visit([this](const auto& each) { take(each); }, block);
    }

    QByteArray bytes() const { return QByteArray::fromStdString(m_text); }

private:
    void line(const QStringList& fields)
    {
        const char* before = "";
        for (const QString& field : fields) {
            m_text += before + csvQuoted(ui::core(field));
            before = ",";
        }
        m_text += "\r\n";
    }

    void text(const QString& id, const Naming& naming, const QString& value)
    {
        line(id, naming, harmless(value), {});
    }

    void line(const QString& id, const Naming& naming, const QString& value, const QString& unit)
    {
        line(
            {id, harmless(naming.part), harmless(naming.of), harmless(naming.figure), value, unit});
    }

    void take(const Heading& heading) { m_part = heading.text; }
    void take(const Figure&) {}

    void take(const Paragraph& paragraph)
    {
        if (!paragraph.id.isEmpty())
            text("sentence." + paragraph.id, {"sentence", {}, paragraph.figure}, paragraph.text);
    }

    void take(const Bullets& bullets)
    {
        for (qsizetype i = 0; i < bullets.items.size(); ++i)
            text(bullets.id + ".sentence", {m_part, QString::number(i + 1), "sentence"},
                 bullets.items[i]);
    }

    void take(const Table& table)
    {
        if (table.shown == Shown::onPages)
            return;
        for (const std::vector<Cell>& row : table.rows) {
            for (std::size_t i = 1; i < row.size(); ++i)
                cell(table, table.columns[i], row[0], row[i]);
        }
    }

    void cell(const Table& table, const Column& column, const Cell& row, const Cell& cell)
    {
        const QString value = cell.raw.isEmpty() ? cell.text : cell.raw;
        if (value.isEmpty() || value == ui::dash)
            return;
        const bool number = !cell.raw.isEmpty() && isNumber(cell.raw);
        const QString unit = !number ? QString() : cell.unit.isEmpty() ? column.unit : cell.unit;
        line(idOf(table, column, row), namingOf(table, column, row),
             number ? value : harmless(value), unit);
    }

    std::string m_text;
    QString m_part;
};

} // namespace

QByteArray asCsv(const Document& document)
{
    return Lines(document).bytes();
}

} // namespace holdband::report
