#include "ui/report/render/html_renderer.h"

#include "ui/report/compose/plain_text.h"
#include "ui/report/render/svg_renderer.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

namespace holdband::report {

namespace {

constexpr double chartWidth = 780.0; ///< CSS pixels

QString escaped(const QString& text, qsizetype most = mostOfCell)
{
    return shortened(text, most).toHtmlEscaped();
}

QString paletteOf(ui::Scheme scheme)
{
    const ui::Colours c = ui::coloursOf(scheme);
    return QStringLiteral(":root { color-scheme: %1; --card: %2; --text: %3; --edge: %4; "
                          "--muted: %5; }")
        .arg(scheme == ui::Scheme::dark ? QStringLiteral("dark") : QStringLiteral("light"),
             c.card.name(), c.text.name(), c.cardEdge.name(), c.muted.name());
}

/// The printed page is always light.
QString styleOf(ui::Scheme scheme)
{
    QString style = QStringLiteral(R"css(
%screen
body { margin: 0 auto; max-width: 52rem; padding: 2rem 1.25rem 3rem; background: var(--card);
  color: var(--text); font: 1rem/1.5 system-ui, sans-serif; }
header { border-bottom: 1px solid var(--edge); margin-bottom: 1.25rem; padding-bottom: .75rem; }
h1 { font-size: 1.9rem; line-height: 1.2; margin: .1rem 0 .3rem; }
h2 { font-size: 1.15rem; margin: 2rem 0 .5rem; }
h1, td, th, p, li { overflow-wrap: anywhere; }
p { margin: 0 0 .6rem; }
.lead { font-size: 1.25rem; line-height: 1.4; }
.muted, .kind, figcaption, .more { color: var(--muted); font-size: .9rem; }
.kind { margin: 0; }
figure { margin: 1.25rem 0; }
figure svg { display: block; width: 100%; height: auto; }
.paper { display: none; }
figcaption { margin-top: .3rem; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; font-size: .88rem; margin: .25rem 0 .75rem; width: 100%;
  font-variant-numeric: tabular-nums; }
caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
th, td { padding: .28rem .9rem .28rem 0; text-align: left; vertical-align: top;
  border-bottom: 1px solid var(--edge); font-weight: 400; overflow-wrap: normal; }
thead th { color: var(--muted); vertical-align: bottom; border-bottom-color: var(--muted); }
th:last-child, td:last-child { padding-right: 0; }
.number, .whole { white-space: nowrap; }
.number { text-align: right; }
thead .number { white-space: normal; }
.facts th { width: 14rem; color: var(--muted); }
.strong { font-weight: 600; }
ul { padding-left: 1.2rem; margin: .25rem 0; }
footer { margin-top: 2.5rem; border-top: 1px solid var(--edge); padding-top: .5rem; }
@page { margin: 16mm; }
@media print {
  %paper
  .screen { display: none; }
  .paper { display: block; }
  body { max-width: none; padding: 0; font-size: 10pt; }
  h2 { break-after: avoid; }
  figure, tr { break-inside: avoid; }
  thead { display: table-header-group; }
  .scroll { overflow: visible; }
}
)css");
    return style.replace(QStringLiteral("%screen"), paletteOf(scheme))
        .replace(QStringLiteral("%paper"), paletteOf(ui::Scheme::light));
}

/// Whether the cell, such as a date, must not be wrapped.
bool isWhole(const Column& column, const Cell& cell)
{
    constexpr qsizetype most = 24;
    return !column.numeric && !column.wide && cell.text.size() <= most;
}

class Page {
public:
    Page(const Document& document, ui::Scheme scheme) : m_scheme(scheme)
    {
        head(document);
        for (const Block& block : document.blocks)
            std::visit([this](const auto& each) { take(each); }, block);
        m_html += QStringLiteral("</main>\n<footer>\n<p class=\"muted\">%1</p>\n</footer>\n"
                                 "</body>\n</html>\n")
                      .arg(escaped(document.footer));
    }

    QByteArray bytes() const { return m_html.toUtf8(); }

private:
    void head(const Document& document)
    {
        m_html = QStringLiteral("<!DOCTYPE html>\n<html lang=\"%3\">\n<head>\n"
                                "<meta charset=\"utf-8\" />\n<title>%1 · %2</title>\n"
                                "<meta name=\"viewport\" content=\"width=device-width\" />\n"
                                "<meta name=\"generator\" content=\"Holdband\" />\n<style>")
                     .arg(escaped(document.title, mostOfTitle), escaped(document.kind),
                          ui::wordsLocale().name().section(u'_', 0, 0));
        m_html += styleOf(m_scheme);
        m_html += QStringLiteral("</style>\n</head>\n<body>\n<header>\n<p class=\"kind\">%1</p>\n"
                                 "<h1 dir=\"auto\">%2</h1>\n")
                      .arg(escaped(document.kind), escaped(document.title, mostOfTitle));
        if (!document.subtitle.isEmpty())
            m_html += QStringLiteral("<p class=\"muted\">%1</p>\n").arg(escaped(document.subtitle));
        m_html += QStringLiteral("</header>\n<main>\n");
    }

    void take(const Heading& heading)
    {
        m_html += QStringLiteral("<h2>%1</h2>\n").arg(escaped(heading.text));
    }

    void take(const Paragraph& paragraph)
    {
        const QString tone = paragraph.tone == Tone::lead    ? QStringLiteral(" class=\"lead\"")
                             : paragraph.tone == Tone::muted ? QStringLiteral(" class=\"muted\"")
                                                             : QString();
        m_html += QStringLiteral("<p%1>%2</p>\n")
                      .arg(tone, unbroken(calm(paragraph.text)).toHtmlEscaped());
    }

    void take(const Bullets& bullets)
    {
        m_html += QStringLiteral("<ul>\n");
        for (const QString& item : bullets.items)
            m_html += QStringLiteral("<li dir=\"auto\">%1</li>\n")
                          .arg(unbroken(calm(item)).toHtmlEscaped());
        m_html += QStringLiteral("</ul>\n");
    }

    void take(const Figure& figure)
    {
        m_html += QStringLiteral("<figure>\n");
        if (m_scheme == ui::Scheme::light) {
            m_html += drawn(figure, m_scheme);
        } else {
            const auto part = QStringLiteral("<div class=\"%1\">\n%2</div>\n");
            m_html += part.arg(QStringLiteral("screen"), drawn(figure, m_scheme));
            m_html += part.arg(QStringLiteral("paper"), drawn(figure, ui::Scheme::light));
        }
        if (!figure.caption.isEmpty())
            m_html += QStringLiteral("<figcaption>%1</figcaption>\n").arg(escaped(figure.caption));
        m_html += QStringLiteral("</figure>\n");
    }

    static QString drawn(const Figure& figure, ui::Scheme scheme)
    {
        PictureLook look;
        look.scheme = scheme;
        look.font.setPixelSize(13);
        look.vectors = true;
        look.columns = 2.0;
        const QSizeF size(chartWidth, figure.picture->heightFor(chartWidth));
        return QString::fromUtf8(
            svgElement([&](QPainter& painter) { figure.picture->paint(painter, size, look); }, size,
                       {figure.title, figure.alt}));
    }

    void take(const Table& table)
    {
        if (table.shown == Shown::amongFigures)
            return;
        const QString kind = table.headerShown ? QString() : QStringLiteral(" class=\"facts\"");
        m_html += QStringLiteral("<div class=\"scroll\">\n<table%1>\n<caption>%2</caption>\n")
                      .arg(kind, escaped(table.title));
        if (table.headerShown)
            header(table);
        m_html += QStringLiteral("<tbody>\n");
        const std::size_t shown = std::min(table.rows.size(), table.mostRows);
        for (std::size_t i = 0; i < shown; ++i)
            row(table, table.rows[i]);
        m_html += QStringLiteral("</tbody>\n</table>\n</div>\n");
        if (table.rows.size() > shown)
            m_html += QStringLiteral("<p class=\"more\">%1</p>\n")
                          .arg(escaped(moreRows(table.rows.size() - shown)));
    }

    void header(const Table& table)
    {
        m_html += QStringLiteral("<thead>\n<tr>");
        for (const Column& column : table.columns)
            m_html += QStringLiteral("<th scope=\"col\"%1>%2</th>")
                          .arg(column.numeric ? QStringLiteral(" class=\"number\"") : QString(),
                               escaped(column.title));
        m_html += QStringLiteral("</tr>\n</thead>\n");
    }

    void row(const Table& table, const std::vector<Cell>& cells)
    {
        m_html += QStringLiteral("<tr>");
        for (std::size_t i = 0; i < cells.size(); ++i) {
            QStringList classes;
            if (table.columns[i].numeric)
                classes << QStringLiteral("number");
            if (isWhole(table.columns[i], cells[i]))
                classes << QStringLiteral("whole");
            if (cells[i].strong)
                classes << QStringLiteral("strong");
            const QString named = classes.isEmpty()
                                      ? QString()
                                      : QStringLiteral(" class=\"%1\"").arg(classes.join(u' '));
            m_html += (i == 0 ? QStringLiteral("<th scope=\"row\"%1>%2</th>")
                              : QStringLiteral("<td%1>%2</td>"))
                          .arg(named, escaped(cells[i].text));
        }
        m_html += QStringLiteral("</tr>\n");
    }

    ui::Scheme m_scheme;
    QString m_html;
};

} // namespace

QByteArray asHtml(const Document& document, ui::Scheme scheme)
{
    return Page(document, scheme).bytes();
}

} // namespace holdband::report
