#include "ui/equipment/setup_card.h"

#include "ui/equipment/list_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
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
    : Card(shortTitle(setup.name), parent), m_parts(new TableCard(Words::tr("Parts"), 0, this)),
      m_edit(new QPushButton(Words::tr("Edit…"), this)),
      m_retire(new QPushButton(setup.retired ? Words::tr("Restore") : Words::tr("Retire"), this)),
      m_remove(new QPushButton(Words::tr("Remove"), this))
{
    setAccessibleName(shown(setup.name));
    setToolTip(shown(setup.name));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    setSecondaryText(setupWords(setup) + retiredText(setup.retired, equipment.zone));
    QStringList remarks;
    if (setup.parts.empty())
        remarks << Words::tr("No parts are on record.");
    if (!setup.ratings.empty())
        remarks << ratingsText(setup);
    if (!remarks.isEmpty())
        contents()->addWidget(makeLabel(remarks.join(QLatin1Char(' ')), "muted", this));
    m_parts->setWords(partsTable(setup, equipment.settings));
    m_parts->setSecondaryText(partsSum(setup, equipment.settings));
    m_parts->makeFoldable(true);
    const auto nameFold = [this, name = shown(setup.name)] {
        m_parts->foldButton()->setAccessibleName(Words::tr("Parts of %1").arg(name));
    };
    nameFold();
    connect(m_parts->foldButton(), &QPushButton::toggled, this, nameFold); // the card renames it
    m_parts->setVisible(!setup.parts.empty());
    contents()->addWidget(m_parts);
    addButtons(shown(setup.name), setup.retired.has_value(), editable);
}

void SetupCard::addButtons(const QString& name, bool retired, bool editable)
{
    m_retire->setToolTip(retireTip(name, retired));
    m_remove->setToolTip(removeTip(name));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    for (QPushButton* button : {m_edit, m_retire, m_remove}) {
        button->setAccessibleName(button->text() + QLatin1Char(' ') + name);
        button->setEnabled(editable);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    contents()->addLayout(buttons);
}

} // namespace holdband::ui
