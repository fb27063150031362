#include "ui/equipment/card_heading.h"

#include "ui/theme/card.h"
#include "ui/theme/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace holdband::ui {

void addToHeading(Card& card, QPushButton* button)
{
    card.findChild<QHBoxLayout*>(QStringLiteral("heading"))->addWidget(button);
}

QWidget* makeHeadingLine(const QString& title, QPushButton* button, QWidget* parent)
{
    auto* line = new QWidget(parent);
    auto* layout = new QHBoxLayout(line);
    layout->setContentsMargins(spacing::card, 4, spacing::card, 0);
    QLabel* label = makeLabel(title, "title", line);
    label->setWordWrap(false);
    layout->addWidget(label);
    layout->addStretch();
    layout->addWidget(button);
    return line;
}

} // namespace holdband::ui
