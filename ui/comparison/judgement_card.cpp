#include "ui/comparison/judgement_card.h"

#include "ui/comparison/side_tables.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace holdband::ui {

namespace {

constexpr double stepsAUnit = 2.0; ///< weights have steps of 0.5

QLabel* cell(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    return label;
}

} // namespace

JudgementCard::JudgementCard(QWidget* parent)
    : Card(Words::tr("Judgement"), parent), m_sentence(makeLabel({}, "title", this)),
      m_grid(new QGridLayout), m_turning(makeLabel({}, "plain", this)),
      m_rule(makeLabel({}, "muted", this)), m_newName(new QLineEdit(this)),
      m_add(new QPushButton(Words::tr("Add"), this))
{
    setSecondaryText(Words::tr("weights are yours, 0 to 5"));
    layOut();
    connect(m_add, &QPushButton::clicked, this, &JudgementCard::addCriterion);
    connect(m_newName, &QLineEdit::returnPressed, this, &JudgementCard::addCriterion);
}

void JudgementCard::layOut()
{
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(2);
    m_grid->setColumnStretch(1, 1);
    contents()->addLayout(m_grid);
    contents()->addWidget(m_sentence);
    contents()->addWidget(m_turning);
    auto* row = new QHBoxLayout;
    m_newName->setPlaceholderText(Words::tr("another criterion"));
    m_newName->setAccessibleName(Words::tr("Another criterion"));
    m_newName->setMaximumWidth(200);
    row->addWidget(m_newName);
    row->addWidget(m_add);
    row->addStretch();
    contents()->addLayout(row);
    contents()->addWidget(m_rule);
    contents()->addStretch();
}

void JudgementCard::setComparison(const results::SideBySide* comparison, const PairSides& sides,
                                  bool writable)
{
    setVisible(comparison != nullptr);
    if (!comparison)
        return;
    m_weighing = comparison->weighing;
    m_sides = sides;
    const std::vector<results::Criterion>& criteria = comparison->judgement.criteria;
    const results::JudgementText& text = comparison->text.judgement;
    const bool same = std::equal(
        m_rows.begin(), m_rows.end(), criteria.begin(), criteria.end(),
        [](const Row& row, const results::Criterion& each) { return row.name == each.name; });
    if (!same)
        rebuild(criteria, text.criteria, writable);
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        fillRow(m_rows[i], criteria[i], text.criteria[i]);
    m_sentence->setText(sentences({text.sentence}).join(QString()));
    m_turning->setText(sentences(text.turning).join(QLatin1Char(' ')));
    m_rule->setText(sentences({text.rule}).join(QString()));
    m_newName->setVisible(writable);
    m_add->setVisible(writable);
}

void JudgementCard::rebuild(const std::vector<results::Criterion>& criteria,
                            const std::vector<results::CriterionText>& texts, bool writable)
{
    m_rows.clear();
    clearLayout(m_grid);
    const QString heads[] = {{}, Words::tr("weight"), {}, QStringLiteral("A"), QStringLiteral("B")};
    for (int column = 0; column < 5; ++column) {
        QLabel* head = makeLabel(heads[column], "muted", this);
        head->setWordWrap(false);
        m_grid->addWidget(head, 0, column,
                          column > 1 ? Qt::AlignRight : Qt::AlignLeft | Qt::AlignVCenter);
    }
    for (std::size_t i = 0; i < criteria.size(); ++i)
        addRow(criteria[i], texts[i], writable);
}

void JudgementCard::addRow(const results::Criterion& criterion, const results::CriterionText& text,
                           bool writable)
{
    const int line = static_cast<int>(m_rows.size()) + 1;
    const QString title = shown(text.title);
    auto* name = new QLabel(title, this);
    auto* weight = new QSlider(Qt::Horizontal, this);
    weight->setRange(0, static_cast<int>(mostWeight * stepsAUnit));
    weight->setPageStep(2);
    weight->setAccessibleName(Words::tr("Weight of %1").arg(title));
    weight->setMinimumWidth(70);
    QLabel* shownWeight = cell({}, this);
    connect(weight, &QSlider::sliderMoved, shownWeight,
            [shownWeight](int steps) { shownWeight->setText(numberText(steps / stepsAUnit, 1)); });
    m_rows.push_back({criterion.name, weight, shownWeight, cell({}, this), cell({}, this)});
    m_grid->addWidget(name, line, 0);
    m_grid->addWidget(weight, line, 1);
    m_grid->addWidget(shownWeight, line, 2);
    m_grid->addWidget(m_rows.back().a, line, 3);
    m_grid->addWidget(m_rows.back().b, line, 4);
    name->setToolTip(shown(text.how));
    if (criterion.own && writable) {
        auto* remove = new QPushButton(Words::tr("Remove"), this);
        remove->setAccessibleName(Words::tr("Remove %1").arg(title));
        connect(remove, &QPushButton::clicked, this,
                [this, which = criterion.name] { removeCriterion(which); });
        m_grid->addWidget(remove, line, 5);
    }
    // While the slider is dragged the sheet doesn't change; the weight is used on release.
    weight->setTracking(false);
    connect(weight, &QSlider::valueChanged, this, &JudgementCard::takeWeights);
}

void JudgementCard::fillRow(const Row& row, const results::Criterion& criterion,
                            const results::CriterionText& text) const
{
    const QSignalBlocker quiet(row.weight);
    row.weight->setValue(static_cast<int>(std::lround(criterion.weight * stepsAUnit)));
    const QString words =
        QStringLiteral("%1. %2 %3")
            .arg(numberText(criterion.weight, 1), shown(text.how), shown(text.turn));
    row.shownWeight->setText(numberText(criterion.weight, 1));
    row.weight->setToolTip(words);
    row.weight->setAccessibleDescription(words);
    row.a->setText(shown(text.a));
    row.b->setText(shown(text.b));
    for (const bool first : {true, false}) {
        QLabel* label = first ? row.a : row.b;
        QPalette palette = label->palette();
        palette.setColor(QPalette::WindowText, m_sides.text(first, coloursOf(*label)));
        label->setPalette(palette);
        label->setToolTip(shown(text.how));
        label->setAccessibleName(
            Words::tr("%1 of %2: %3")
                .arg(shown(text.title), first ? m_sides.a : m_sides.b, label->text()));
    }
}

QString JudgementCard::shownWeight(const QString& criterion) const
{
    for (const Row& row : m_rows) {
        if (row.name == criterion.toStdString())
            return row.shownWeight->text();
    }
    return {};
}

QSlider* JudgementCard::weight(const QString& criterion) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&](const Row& row) { return shown(row.name) == criterion; });
    return found == m_rows.end() ? nullptr : found->weight;
}

void JudgementCard::takeWeights()
{
    Weighing wanted = m_weighing;
    for (const Row& row : m_rows) {
        const double weight = row.weight->value() / stepsAUnit;
        if (weight != usualWeight || wanted.weights.contains(row.name))
            wanted.weights[row.name] = weight;
    }
    if (wanted != m_weighing)
        Q_EMIT weighingWanted(wanted);
}

void JudgementCard::addCriterion()
{
    const std::string name = core(m_newName->text().trimmed());
    if (name.empty())
        return m_newName->setFocus();
    m_newName->clear();
    Weighing wanted = m_weighing;
    wanted.weights.emplace(name, usualWeight);
    if (wanted != m_weighing)
        Q_EMIT weighingWanted(wanted);
}

void JudgementCard::removeCriterion(const std::string& name)
{
    Weighing wanted = m_weighing;
    wanted.weights.erase(name);
    if (wanted != m_weighing)
        Q_EMIT weighingWanted(wanted);
}

QString JudgementCard::sentence() const
{
    return m_sentence->text();
}

} // namespace holdband::ui
