#include "ui/theme/empty_page.h"

#include "ui/theme/theme.h"

#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

constexpr int exampleWide = 30; ///< heights of a line
constexpr int exampleHigh = 9;
constexpr int widestSentence = 36;

} // namespace

EmptyPage::EmptyPage(EmptyExample example, const QString& sentence, const QString& buttonText,
                     QWidget* parent)
    : QWidget(parent), m_example(example), m_room(new QWidget(this)),
      m_sentence(makeLabel(sentence, "plain", this)), m_button(new QPushButton(buttonText, this))
{
    const int line = fontMetrics().height();
    m_room->setMaximumSize(exampleWide * line, exampleHigh * line);
    m_room->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_room->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_sentence->setAlignment(Qt::AlignHCenter);
    m_sentence->setMaximumWidth(widestSentence * line);
    setRole(m_button, "main");
    // Stretches instead of alignments, so that the sentence wraps and the example may shrink.
    const auto centred = [](QWidget* widget) {
        auto* row = new QHBoxLayout;
        row->addStretch(1);
        row->addWidget(widget, 100);
        row->addStretch(1);
        return row;
    };
    auto* column = new QVBoxLayout(this);
    column->setSpacing(16);
    column->addStretch(1);
    column->addLayout(centred(m_room), 100);
    column->addLayout(centred(m_sentence));
    column->addWidget(m_button, 0, Qt::AlignHCenter);
    column->addStretch(1);
    setAccessibleName(sentence);
}

QString EmptyPage::sentence() const
{
    return m_sentence->text();
}

QRect EmptyPage::exampleBox() const
{
    return m_room->geometry();
}

void EmptyPage::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.translate(exampleBox().topLeft());
    paintEmptyExample(painter, exampleBox().size(), m_example, coloursOf(*this));
}

} // namespace holdband::ui
