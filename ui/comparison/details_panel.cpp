#include "ui/comparison/details_panel.h"

#include "ui/charts/pair_deviation.h"
#include "ui/charts/pair_spread.h"
#include "ui/charts/picture_view.h"
#include "ui/comparison/batches_card.h"
#include "ui/comparison/side_tables.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/columns_layout.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

DetailsPanel::DetailsPanel(QWidget* parent)
    : QWidget(parent), m_table(new TableCard(Words::tr("Measures"), 5, this)),
      m_sentences(makeLabel({}, "plain", this)),
      m_notes(new NotesCard(Words::tr("How fair is this?"), this)),
      m_weather(new Card(Words::tr("How the same weather was computed"), this)),
      m_weatherText(makeLabel({}, "plain", this)),
      m_deviations(new Card(Words::tr("Deviation from target"), this)),
      m_deviationPicture(new PictureView(Words::tr("Deviation of both from target"), this, false)),
      m_spreadPicture(new PictureView(Words::tr("Time spent at each deviation"), this, false)),
      m_batches(new BatchesCard(this))
{
    for (QLabel* label : {m_sentences, m_weatherText})
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_table->contents()->insertWidget(0, m_sentences);
    m_weather->contents()->addWidget(m_weatherText);
    auto* pictures = new ColumnsLayout(spacing::gap);
    for (PictureView* view : {m_deviationPicture, m_spreadPicture})
        pictures->addColumn(view, 1, 24 * fontMetrics().height());
    m_deviations->contents()->addLayout(pictures);
    layOut();
}

void DetailsPanel::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::gap);
    QWidget* before = nullptr;
    for (Card* card : cards()) {
        QWidget* inside = card->findChild<PlainTable*>();
        card->makeFoldable(true);
        card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
        column->addWidget(card);
        if (before)
            setTabOrder(before, card->foldButton());
        if (inside)
            setTabOrder(card->foldButton(), inside);
        before = inside ? inside : card->foldButton();
        connect(card->foldButton(), &QPushButton::toggled, this, &DetailsPanel::folded);
    }
    setTabOrder(m_batches->foldButton(), m_batches->measure());
}

std::vector<Card*> DetailsPanel::cards() const
{
    return {m_table, m_notes, m_weather, m_deviations, m_batches};
}

void DetailsPanel::setOpen(bool open)
{
    const QSignalBlocker quiet(this);
    for (Card* card : cards())
        card->setFolded(!open);
}

bool DetailsPanel::isOpen() const
{
    const std::vector<Card*> all = cards();
    return std::none_of(all.begin(), all.end(), [](const Card* card) { return card->isFolded(); });
}

void DetailsPanel::setComparison(const results::SideBySide* comparison, const PairSides& sides)
{
    m_batches->setComparison(comparison, sides);
    for (Card* card : {static_cast<Card*>(m_table), m_weather, m_deviations})
        card->setVisible(comparison != nullptr);
    if (!comparison) {
        m_table->setWords({});
        m_notes->setSentences({});
        return;
    }
    fillTexts(*comparison);
    fillDeviations(*comparison, sides);
}

void DetailsPanel::fillTexts(const results::SideBySide& comparison)
{
    m_sentences->setText(withNoBreakSpaces(shown(comparison.text.headline) + QLatin1Char(' ') +
                                           shown(comparison.text.belowHeadline)));
    m_table->setWords(measuresTable(comparison));
    m_table->table()->setAccessibleName(Words::tr("Measures"));
    m_table->setRemark(batchesThatCount(comparison));
    m_table->setSecondaryText(QString::number(comparison.measures.size()));
    m_notes->setSentences(fairnessNotes(comparison));
    m_notes->setSecondaryText(Words::counted("%n notes", "%n note", comparison.text.notes.size()));
    const QString weather = weatherDetails(comparison);
    m_weatherText->setText(weather);
    m_weather->setVisible(!weather.isEmpty());
}

void DetailsPanel::fillDeviations(const results::SideBySide& comparison, const PairSides& sides)
{
    const QString words = shown(comparison.text.temperatureSentence);
    const TemperatureUnit unit = comparison.settings.temperatureUnit();
    const auto show = [&](PictureView* view, auto picture) {
        const bool any = !picture->empty();
        view->setPicture(any ? std::move(picture) : nullptr, words);
        return any ? 1 : 0;
    };
    const int pictures =
        show(m_deviationPicture,
             std::make_shared<PairDeviationPicture>(comparison.deviations, unit, sides)) +
        show(m_spreadPicture,
             std::make_shared<PairSpreadPicture>(comparison.deviations, unit, sides));
    m_deviations->setVisible(pictures > 0);
    m_deviations->setSecondaryText(Words::counted("%n charts", "%n chart", pictures));
}

QString DetailsPanel::sentences() const
{
    return m_sentences->text();
}

} // namespace holdband::ui
