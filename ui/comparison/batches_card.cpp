#include "ui/comparison/batches_card.h"

#include "ui/charts/batch_dots.h"
#include "ui/charts/picture_view.h"
#include "ui/comparison/side_tables.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace holdband::ui {

BatchesCard::BatchesCard(QWidget* parent)
    : Card(Words::tr("Batch by batch"), parent), m_measure(new QComboBox(this)),
      m_picture(new PictureView(Words::tr("Every batch's figure"), this, false)),
      m_idle(makeLabel({}, "muted", this))
{
    m_measure->setAccessibleName(Words::tr("Measure of every batch"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_measure);
    row->addStretch();
    contents()->addLayout(row);
    contents()->addWidget(m_picture);
    contents()->addWidget(m_idle);
    connect(m_measure, &QComboBox::activated, this, &BatchesCard::draw);
}

void BatchesCard::setComparison(const results::SideBySide* comparison, const PairSides& sides)
{
    setVisible(comparison && comparison->ofSetups);
    if (!comparison || !comparison->ofSetups)
        return;
    m_figures = comparison->batchFigures;
    m_lines = comparison->text.measures;
    m_sides = sides;
    const QSignalBlocker quiet(m_measure);
    const QString before = m_measure->currentText();
    m_measure->clear();
    for (std::size_t i = 0; i < m_figures.size(); ++i) {
        if (!m_figures[i].a.batches.empty() || !m_figures[i].b.batches.empty())
            m_measure->addItem(shown(m_lines[i].title), static_cast<int>(i));
    }
    setSecondaryText(Words::counted("%n batches", "%n batch",
                                    comparison->batchesA.size() + comparison->batchesB.size()));
    m_measure->setCurrentIndex(std::max(m_measure->findText(before), 0));
    const std::vector<std::string>& idle = comparison->text.idle;
    m_idle->setText(sentences(idle).join(QLatin1Char(' ')));
    m_idle->setVisible(!idle.empty());
    draw();
}

QString BatchesCard::wordsOf(std::size_t measure) const
{
    QStringList words;
    const auto add = [&](const QString& side, const results::SetupFigures& figures,
                         const std::vector<std::string>& texts) {
        for (std::size_t i = 0; i < texts.size(); ++i)
            words << side + QStringLiteral(": ") + shown(figures.batches[i].batch) +
                         QLatin1Char(' ') + shown(texts[i]);
    };
    add(m_sides.a, m_figures[measure].a, m_lines[measure].batchesA);
    add(m_sides.b, m_figures[measure].b, m_lines[measure].batchesB);
    return words.join(QStringLiteral("; "));
}

void BatchesCard::draw()
{
    if (m_measure->currentIndex() < 0)
        return m_picture->setPicture(nullptr);
    const auto measure = static_cast<std::size_t>(m_measure->currentData().toInt());
    const results::MeasureText& line = m_lines[measure];
    m_picture->setPicture(std::make_shared<BatchDotsPicture>(shown(line.title), m_figures[measure],
                                                             line.factor, m_sides),
                          wordsOf(measure));
    m_picture->setToolTip(wordsOf(measure).replace(QStringLiteral("; "), QStringLiteral("\n")));
}

} // namespace holdband::ui
