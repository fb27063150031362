#include "ui/imports/sheet_choice.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

namespace holdband::ui {

SheetChoice::SheetChoice(QWidget* parent) : QWidget(parent), m_box(new QComboBox(this))
{
    auto* label = makeLabel(Words::tr("Sheet"), "muted", this);
    label->setWordWrap(false);
    label->setBuddy(m_box);
    m_box->setAccessibleName(Words::tr("Sheet"));
    m_box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(label);
    layout->addWidget(m_box);
    layout->addStretch();
    connect(m_box, &QComboBox::activated, this, [this] {
        if (m_box->currentText() != m_current)
            Q_EMIT chosen(m_box->currentText());
    });
}

void SheetChoice::showLog(const LogState& log)
{
    setVisible(log.sheets.size() > 1);
    if (log.sheets.empty())
        return;
    QStringList names;
    for (const std::string& name : log.sheets)
        names << shown(name);
    m_box->clear();
    m_box->addItems(names);
    m_current = shown(log.source.sheet.value_or(log.sheets.front()));
    m_box->setCurrentText(m_current);
}

} // namespace holdband::ui
