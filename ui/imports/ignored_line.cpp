#include "ui/imports/ignored_line.h"

#include "core/intake/csv/temperature_hint.h"
#include "core/text/name_suggestions.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace holdband::ui {

namespace {

constexpr std::size_t mostColumnsNamed = 3;

QString ignoredText(const intake::LogPreview& preview, const std::vector<std::size_t>& columns)
{
    std::vector<std::string> names;
    for (const std::size_t column : columns)
        names.push_back(preview.columns[column].header);
    const QString list = shown(joined(names, mostColumnsNamed));
    return columns.size() == 1
               ? Words::tr("Ignored, but it looks like a temperature: %1. Choose above the column "
                           "what it is.")
                     .arg(list)
               : Words::tr("Ignored, but they look like temperatures: %1. Choose above each "
                           "column what it is.")
                     .arg(list);
}

} // namespace

IgnoredLine::IgnoredLine(QWidget* parent)
    : QWidget(parent), m_words(new ElidedLabel({}, this)),
      m_button(new QPushButton(Words::tr("&Go to the column"), this))
{
    setRole(m_words, "muted");
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words, 1);
    layout->addWidget(m_button);
    connect(m_button, &QPushButton::clicked, this, [this] { Q_EMIT columnWanted(m_first); });
    hide();
}

void IgnoredLine::showLog(const LogState& log)
{
    const auto columns = log.preview && log.stage != LogStage::saved
                             ? intake::ignoredTemperatures(*log.preview, log.map)
                             : std::vector<std::size_t>{};
    setVisible(!columns.empty());
    if (columns.empty())
        return m_words->setWholeText({});
    m_first = static_cast<int>(columns.front());
    m_words->setWholeText(ignoredText(*log.preview, columns));
    m_button->setAccessibleDescription(m_words->wholeText());
}

QString IgnoredLine::text() const
{
    return m_words->wholeText();
}

} // namespace holdband::ui
