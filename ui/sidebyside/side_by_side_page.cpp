#include "ui/sidebyside/side_by_side_page.h"

#include "core/text/near.h"
#include "ui/session/session.h"
#include "ui/sidebyside/comparison_chart.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

TableWords tableOf(const review::SideBySide& comparison)
{
    TableWords table;
    table.header = {QStringLiteral("Measure"), QStringLiteral("A"),     QStringLiteral("B"),
                    QStringLiteral("A − B"),   QStringLiteral("A ÷ B"), QStringLiteral("ahead")};
    table.numeric = {false, true, true, true, true, false};
    for (const review::MeasureWords& line : comparison.lines)
        table.rows.push_back({{shown(line.title), {}, false},
                              {shown(line.a), {}, true},
                              {shown(line.b), {}, true},
                              {shown(line.difference), {}, false},
                              {shown(line.ratio), {}, false},
                              {shown(line.ahead), {}, line.ahead.size() == 1}});
    return table;
}

QStringList notesOf(const review::SideBySide& comparison)
{
    QStringList notes;
    for (const review::NoteWords& note : comparison.notes)
        notes << QStringLiteral("• %1: %2.").arg(capitalised(shown(note.note)), shown(note.effect));
    return notes;
}

/// Of two setups: which batches went in.
QString batchesOf(const review::SideBySide& comparison)
{
    if (!comparison.ofSetups)
        return {};
    return QStringLiteral("%1: %2. %3: %4.")
        .arg(shown(comparison.a), shown(joined(comparison.batchesA)), shown(comparison.b),
             shown(joined(comparison.batchesB)));
}

} // namespace

SideBySidePage::SideBySidePage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session), m_a(new QComboBox(this)), m_b(new QComboBox(this)),
      m_energy(makeLabel({}, "title", this)), m_temperature(makeLabel({}, "muted", this)),
      m_chart(new ComparisonChart(this)), m_table(new TableCard({}, 5, this)),
      m_notes(new NotesCard(QStringLiteral("How fair is this?"), this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(makeChoices());
    layout->addWidget(makeHeadline());
    layout->addWidget(makeBody(), 1);
    m_table->table()->setAccessibleName(QStringLiteral("Measures"));
    connect(m_a, &QComboBox::activated, this, &SideBySidePage::refresh);
    connect(m_b, &QComboBox::activated, this, &SideBySidePage::refresh);
}

QWidget* SideBySidePage::makeChoices()
{
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* swap = new QPushButton(QStringLiteral("⇄"), row);
    swap->setAccessibleName(QStringLiteral("Swap A and B"));
    swap->setToolTip(QStringLiteral("Swap A and B"));
    m_a->setAccessibleName(QStringLiteral("A"));
    m_b->setAccessibleName(QStringLiteral("B"));
    for (QComboBox* box : {m_a, m_b})
        box->setMinimumWidth(190);
    layout->addWidget(makeLabel(QStringLiteral("A"), "title", row));
    layout->addWidget(m_a);
    layout->addWidget(swap);
    layout->addWidget(makeLabel(QStringLiteral("B"), "title", row));
    layout->addWidget(m_b);
    layout->addStretch();
    connect(swap, &QPushButton::clicked, this,
            [this] { compare(m_b->currentText(), m_a->currentText()); });
    return row;
}

QWidget* SideBySidePage::makeHeadline()
{
    auto* card = new Card({}, this);
    QFont large = m_energy->font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    m_energy->setFont(large);
    m_energy->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_temperature->setTextInteractionFlags(Qt::TextSelectableByMouse);
    card->contents()->addWidget(m_energy);
    card->contents()->addWidget(m_temperature);
    card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    return card;
}

QWidget* SideBySidePage::makeBody()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    m_body = new QBoxLayout(QBoxLayout::RightToLeft, inner);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(spacing::gap);
    m_left = new QWidget(inner);
    auto* left = new QVBoxLayout(m_left);
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(spacing::gap);
    left->addWidget(m_chart);
    left->addWidget(m_notes);
    left->addStretch();
    m_body->addWidget(m_table, 0, Qt::AlignTop);
    m_body->addWidget(m_left, 1);
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

/// Beside each other where there is room, else one below the other, the table first.
void SideBySidePage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_body->setDirection(width() < 1180 ? QBoxLayout::TopToBottom : QBoxLayout::RightToLeft);
}

void SideBySidePage::fillChoice(QComboBox* box, const QString& wanted)
{
    const QSignalBlocker quiet(box);
    box->clear();
    box->addItems(m_batches);
    if (!m_batches.isEmpty() && m_setups.size() > 1)
        box->insertSeparator(box->count());
    if (m_setups.size() > 1)
        box->addItems(m_setups);
    const int index = box->findText(wanted);
    box->setCurrentIndex(std::max(index, 0));
}

void SideBySidePage::setLanes(const review::LanesReview& lanes)
{
    const QString a = m_a->currentText();
    const QString b = m_b->currentText();
    m_batches.clear();
    m_setups.clear();
    m_setupOf.clear();
    for (std::size_t i = 0; i < lanes.lanes.size(); ++i) {
        m_setups << shown(lanes.lanes[i].setup);
        m_setupOf[m_setups.back()] = static_cast<int>(i);
        for (const review::LaneBar& bar : lanes.lanes[i].bars) {
            m_batches << shown(bar.batch);
            m_setupOf[m_batches.back()] = static_cast<int>(i);
        }
    }
    const bool two = m_setups.size() > 1;
    fillChoice(m_a, a.isEmpty() && two ? m_setups[0] : a);
    fillChoice(m_b, b.isEmpty() && two ? m_setups[1] : b);
    refresh();
}

void SideBySidePage::compare(const QString& a, const QString& b)
{
    fillChoice(m_a, a);
    fillChoice(m_b, b);
    refresh();
}

void SideBySidePage::refresh()
{
    const QString a = m_a->currentText();
    const QString b = m_b->currentText();
    if (a.isEmpty() || b.isEmpty() || a == b)
        return showProblem(QStringLiteral("Choose two batches or two setups."));
    m_session->ask<review::SideBySide>(
        this,
        [a = core(a), b = core(b)](const store::LogbookFile& file) {
            return review::reviewSideBySide(file, a, b);
        },
        [this, a, b](Result<review::SideBySide> comparison) {
            if (a != m_a->currentText() || b != m_b->currentText())
                return;
            if (comparison)
                fill(*comparison);
            else
                showProblem(sentence(comparison.error()));
        });
}

int SideBySidePage::setupIndex(const std::string& name) const
{
    const auto found = m_setupOf.find(shown(name));
    return found == m_setupOf.end() ? 0 : found->second;
}

void SideBySidePage::fill(const review::SideBySide& comparison)
{
    m_energy->setText(shown(comparison.energySentence));
    m_temperature->setText(shown(comparison.temperatureSentence));
    m_subtitle = QStringLiteral("A %1 · B %2").arg(shown(comparison.a), shown(comparison.b));
    m_table->setWords(tableOf(comparison));
    const int a = setupIndex(comparison.a);
    const int b = setupIndex(comparison.b);
    m_chart->setCurve(comparison.ratioCurve, a, a == b ? b + 1 : b);
    m_notes->setSentences(notesOf(comparison));
    m_left->setVisible(comparison.ratioCurve.size() > 1 || !comparison.notes.empty());
    m_table->setRemark(batchesOf(comparison));
    Q_EMIT comparisonShown();
}

void SideBySidePage::showProblem(const QString& words)
{
    m_energy->setText(words);
    m_temperature->clear();
    m_subtitle.clear();
    m_table->setWords({});
    m_chart->setCurve({}, 0, 1);
    m_notes->setSentences({});
    m_left->hide();
    m_table->setRemark({});
    Q_EMIT comparisonShown();
}

void SideBySidePage::clear()
{
    m_a->clear();
    m_b->clear();
    showProblem(QStringLiteral("Choose two batches or two setups."));
}

QString SideBySidePage::energySentence() const
{
    return m_energy->text();
}

QString SideBySidePage::temperatureSentence() const
{
    return m_temperature->text();
}

} // namespace holdband::ui
