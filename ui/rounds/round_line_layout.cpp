// Lays out the widgets of a round's line in the grid.
#include "ui/rounds/round_line.h"

#include "ui/rounds/round_entry.h"
#include "ui/rounds/week_sparkline.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

class Stripe : public QWidget {
public:
    Stripe(const QColor& colour, QWidget* parent) : QWidget(parent)
    {
        setFixedWidth(4);
        setAutoFillBackground(true);
        QPalette own = palette();
        own.setColor(QPalette::Window, colour);
        setPalette(own);
    }
};

QVBoxLayout* twoLines(QWidget* first, QWidget* second)
{
    auto* layout = new QVBoxLayout;
    layout->setSpacing(0);
    layout->addWidget(first);
    layout->addWidget(second);
    return layout;
}

QFont demiBold(QFont font)
{
    font.setWeight(QFont::DemiBold);
    return font;
}

} // namespace

void RoundLine::addWidgets(QGridLayout* grid, int gridRow, QWidget* parent)
{
    auto* name = new ElidedLabel(m_name, parent);
    name->setFont(demiBold(name->font()));
    auto* unit = makeLabel(unitText(m_row), "muted", parent);
    m_lastTime->setWordWrap(false);
    m_expected->setWordWrap(false);
    m_field->setFont(demiBold(sized(m_field->font(), TypeSize::heading)));
    m_field->setAlignment(Qt::AlignRight);
    m_field->setMaximumWidth(220);
    m_field->setAccessibleName(Words::tr("%1 reading, %2").arg(m_name, unitText(m_row)));
    m_note->setAccessibleName(Words::tr("%1 note").arg(m_name));
    m_note->setPlaceholderText(Words::tr("note"));
    m_note->setMinimumHeight(m_field->sizeHint().height());
    m_mark->setMinimumWidth(18);
    const QColor colour =
        m_row.setupIndex ? setupColour(*m_row.setupIndex) : coloursOf(*parent).ambient;
    grid->addWidget(new Stripe(colour, parent), gridRow, 0);
    grid->addLayout(twoLines(name, unit), gridRow, 1);
    grid->addLayout(twoLines(m_last, m_lastTime), gridRow, 2);
    grid->addWidget(m_expected, gridRow, 3);
    if (m_week)
        grid->addWidget(m_week, gridRow, 4);
    grid->addWidget(m_field, gridRow, 5);
    grid->addWidget(m_mark, gridRow, 6);
    auto* beside = new QHBoxLayout;
    beside->setSpacing(8);
    if (m_sample)
        addSample(beside);
    beside->addWidget(m_note, 1);
    grid->addLayout(beside, gridRow, 7);
    grid->addWidget(m_message, gridRow + 1, 3, 1, 5);
    grid->addWidget(m_question, gridRow + 1, 2, 1, 6);
    m_message->hide();
}

void RoundLine::addSample(QHBoxLayout* layout)
{
    m_sample->setMinimumHeight(m_field->sizeHint().height());
    m_sample->setMaximumWidth(m_sample->fontMetrics().horizontalAdvance(QLatin1Char('0')) * 16);
    layout->addWidget(m_sample);
    setTemperatureUnit(m_temperatureUnit);
    connect(m_sample, &QLineEdit::returnPressed, this, &RoundLine::entered);
    for (QLineEdit* field : {m_field, m_sample})
        connect(field, &QLineEdit::textEdited, this, &RoundLine::showCorrected);
}

} // namespace holdband::ui
