#include "ui/imports/layout_choices.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <utility>

namespace holdband::ui {

namespace {

constexpr qsizetype longestLine = 40; ///< characters of a row that are shown

constexpr std::pair<char, const char*> delimiters[] = {
    {',', QT_TRANSLATE_NOOP("Words", "comma ,")},
    {';', QT_TRANSLATE_NOOP("Words", "semicolon ;")},
    {'\t', QT_TRANSLATE_NOOP("Words", "tab")},
    {'|', QT_TRANSLATE_NOOP("Words", "bar |")},
    {' ', QT_TRANSLATE_NOOP("Words", "blanks")}};

QString delimiterName(char delimiter)
{
    for (const auto& [sign, name] : delimiters) {
        if (sign == delimiter)
            return Words::tr(name);
    }
    return QString(QLatin1Char(delimiter));
}

/// Such as "as found: comma , — it parts most rows alike"
QString asFound(const QString& what, const std::string& why)
{
    const QString words = Words::tr("as found: %1").arg(what);
    return why.empty() ? words : words + QStringLiteral(" — ") + shown(why);
}

QString headerName(std::int64_t line)
{
    return line == 0 ? Words::tr("none") : Words::tr("line %1").arg(line);
}

QString rowText(const intake::PreviewRow& row)
{
    QStringList cells;
    for (const std::string& cell : row.cells)
        cells << shown(cell).simplified();
    QString text = cells.join(QStringLiteral(" · "));
    if (text.size() > longestLine)
        text = text.left(longestLine) + QStringLiteral("…");
    return headerName(row.line) + QStringLiteral(": ") + text;
}

QComboBox* makeBox(const QString& name, int width, QWidget* parent)
{
    auto* box = new QComboBox(parent);
    box->setAccessibleName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(width);
    box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed); // uses extra width
    return box;
}

/// The list is as wide as its texts; the tooltip of the closed box has the full text.
void finish(QComboBox* box, const QVariant& chosen)
{
    box->setCurrentIndex(std::max(0, chosen.isValid() ? box->findData(chosen) : 0));
    box->setToolTip(box->currentText());
    box->view()->setMinimumWidth(box->view()->sizeHintForColumn(0) + 30);
}

} // namespace

LayoutChoices::LayoutChoices(QWidget* parent)
    : QWidget(parent), m_delimiter(makeBox(Words::tr("Separator"), 26, this)),
      m_header(makeBox(Words::tr("Header row"), 24, this))
{
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    for (QComboBox* box : {m_delimiter, m_header}) {
        QLabel* words = makeLabel(box->accessibleName(), "muted", this);
        words->setWordWrap(false);
        layout->addWidget(words);
        layout->addWidget(box, 1);
        layout->addSpacing(8);
        connect(box, &QComboBox::activated, this, &LayoutChoices::changed);
    }
}

void LayoutChoices::showLayout(const intake::LogPreview& preview,
                               const LayoutRequest& layoutRequest)
{
    fillDelimiters(preview, layoutRequest);
    fillHeaders(preview, layoutRequest);
}

void LayoutChoices::fillDelimiters(const intake::LogPreview& preview,
                                   const LayoutRequest& layoutRequest)
{
    m_delimiter->clear();
    m_delimiter->addItem(preview.found ? asFound(delimiterName(preview.found->delimiter),
                                                 preview.found->delimiterReason)
                                       : Words::tr("as found"));
    for (const auto& [sign, name] : delimiters)
        m_delimiter->addItem(QString::fromLatin1(name), QString(QLatin1Char(sign)));
    finish(m_delimiter, layoutRequest.delimiter
                            ? QVariant(QString(QLatin1Char(*layoutRequest.delimiter)))
                            : QVariant());
}

void LayoutChoices::fillHeaders(const intake::LogPreview& preview,
                                const LayoutRequest& layoutRequest)
{
    m_header->clear();
    // A delimiter chosen without a header line: the header is detected again.
    const bool detectedAgain =
        layoutRequest.delimiter && preview.asked.delimiter == layoutRequest.delimiter;
    const auto line =
        detectedAgain && !preview.asked.headerLine
            ? std::optional(preview.layout.headerLine)
            : (preview.found && !detectedAgain ? std::optional(preview.found->headerLine)
                                               : std::nullopt);
    const std::string why =
        preview.found && !detectedAgain ? preview.found->headerReason : std::string();
    m_header->addItem(line ? asFound(headerName(*line), why) : Words::tr("as found"));
    m_header->addItem(Words::tr("none: the columns are numbered"), qlonglong{0});
    for (const intake::PreviewRow& row : preview.rows)
        m_header->addItem(rowText(row), static_cast<qlonglong>(row.line));
    if (layoutRequest.headerLine &&
        m_header->findData(static_cast<qlonglong>(*layoutRequest.headerLine)) < 0)
        m_header->addItem(headerName(*layoutRequest.headerLine),
                          static_cast<qlonglong>(*layoutRequest.headerLine));
    finish(m_header, layoutRequest.headerLine
                         ? QVariant(static_cast<qlonglong>(*layoutRequest.headerLine))
                         : QVariant());
}

LayoutRequest LayoutChoices::layoutRequest() const
{
    LayoutRequest layoutRequest;
    const QString sign = m_delimiter->currentData().toString();
    if (!sign.isEmpty())
        layoutRequest.delimiter = sign.front().toLatin1();
    if (m_header->currentData().isValid())
        layoutRequest.headerLine = m_header->currentData().toLongLong();
    return layoutRequest;
}

} // namespace holdband::ui
