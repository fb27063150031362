#include "ui/run/figure_tile.h"

#include "ui/run/explained_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QVBoxLayout>

namespace holdband::ui {

FigureTile::FigureTile(TypeSize size, QWidget* parent)
    : QWidget(parent), m_value(new ExplainedLabel(this)), m_caption(makeLabel({}, "muted", this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_value);
    layout->addWidget(m_caption);
    layout->addStretch();
    QFont large = sized(m_value->font(), size);
    large.setWeight(QFont::DemiBold);
    m_value->setFont(large);
    for (QLabel* label : std::initializer_list<QLabel*>{m_value, m_caption}) {
        label->setWordWrap(false);
        label->setContentsMargins(4, 0, 4, 0);
    }
}

void FigureTile::setFigure(const QString& value, const QString& caption, const QString& explanation,
                           bool warns)
{
    m_value->setWords(value, explanation);
    m_value->setAccessibleName(value + QStringLiteral(", ") + caption);
    m_caption->setText(withNoBreakSpaces(caption));
    m_caption->setToolTip(explanation);
    setRole(m_value, warns ? "warn" : "plain");
}

} // namespace holdband::ui
