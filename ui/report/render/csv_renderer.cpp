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

class Lines {
public:
    explicit Lines(const Document& document)
    {
        line({"part", "of", "figure", "value", "unit"});
        text("report", {}, "kind", document.kind);
        text("report", {}, "of", document.title);
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

    void text(const QString& part, const QString& of, const QString& figure, const QString& value)
    {
        line({harmless(part), harmless(of), harmless(figure), harmless(value), {}});
    }

    void take(const Heading& heading) { m_part = heading.text; }
    void take(const Figure&) {}

    void take(const Paragraph& paragraph)
    {
        if (!paragraph.figure.isEmpty())
            text("sentence", {}, paragraph.figure, paragraph.text);
    }

    void take(const Bullets& bullets)
    {
        for (qsizetype i = 0; i < bullets.items.size(); ++i)
            text(m_part, QString::number(i + 1), "sentence", bullets.items[i]);
    }

    void take(const Table& table)
    {
        if (table.shown == Shown::onPages)
            return;
        for (const std::vector<Cell>& row : table.rows) {
            const QString name = row[0].raw.isEmpty() ? row[0].text : row[0].raw;
            for (std::size_t i = 1; i < row.size(); ++i)
                cell(table, row[i], table.columns[i], name);
        }
    }

    /// A table without a header is a list of facts: the row's name becomes the figure's name.
    void cell(const Table& table, const Cell& cell, const Column& column, const QString& name)
    {
        const QString value = cell.raw.isEmpty() ? cell.text : cell.raw;
        if (value.isEmpty() || value == ui::dash)
            return;
        const bool number = !cell.raw.isEmpty() && isNumber(cell.raw);
        const QString unit = !number ? QString() : cell.unit.isEmpty() ? column.unit : cell.unit;
        line({harmless(table.title), table.headerShown ? harmless(name) : QString(),
              harmless(table.headerShown ? column.title : name), number ? value : harmless(value),
              unit});
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
