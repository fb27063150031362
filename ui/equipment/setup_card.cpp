#include "ui/equipment/setup_card.h"

#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

QString shortTitle(const std::string& name)
{
    constexpr qsizetype longest = 40;
    const QString whole = shown(name);
    return whole.size() <= longest ? whole : whole.left(longest - 1) + QStringLiteral("…");
}

SetupCard::SetupCard(const Setup& setup, const Equipment& equipment, bool editable, QWidget* parent)
    : TableCard(shortTitle(setup.name), 0, parent),
      m_edit(new QPushButton(Words::tr("Edit…"), this)),
      m_retire(new QPushButton(setup.retired ? Words::tr("Restore") : Words::tr("Retire"), this)),
      m_remove(new QPushButton(Words::tr("Remove"), this))
{
    setAccessibleName(shown(setup.name));
    setToolTip(shown(setup.name));
    setSecondaryText(setupWords(setup) + retiredText(setup.retired, equipment.zone));
    setWords(partsTable(setup, equipment.settings));
    QStringList remarks;
    if (setup.parts.empty())
        remarks << Words::tr("No parts are on record.");
    if (!setup.ratings.empty())
        remarks << ratingsText(setup);
    setRemark(remarks.join(QLatin1Char(' ')));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    for (QPushButton* button : {m_edit, m_retire, m_remove}) {
        button->setAccessibleName(button->text() + QLatin1Char(' ') + shown(setup.name));
        button->setEnabled(editable);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    contents()->addLayout(buttons);
}

} // namespace holdband::ui
