#include "ui/comparison/comparison_choice.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>

namespace holdband::ui {

namespace {

QLabel* plainLabel(const QString& text, const char* role, QWidget* parent)
{
    QLabel* label = makeLabel(text, role, parent);
    label->setWordWrap(false);
    return label;
}

} // namespace

ComparisonChoice::ComparisonChoice(QWidget* parent)
    : QWidget(parent), m_a(new QComboBox(this)), m_b(new QComboBox(this)),
      m_fromLabel(plainLabel(Words::tr("counted &from"), "muted", this)),
      m_from(new QComboBox(this)), m_batches(new QPushButton(this)), m_ticks(new QMenu(this))
{
    auto* swap = new QPushButton(QStringLiteral("⇄"), this);
    swap->setAccessibleName(Words::tr("Swap A and B"));
    swap->setToolTip(Words::tr("Swap A and B"));
    m_a->setAccessibleName(QStringLiteral("A"));
    m_b->setAccessibleName(QStringLiteral("B"));
    m_from->setAccessibleName(Words::tr("Counted from"));
    m_fromLabel->setBuddy(m_from);
    m_batches->setMenu(m_ticks);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QComboBox* box : {m_a, m_b}) {
        box->setMinimumWidth(120);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        box->setMaximumWidth(260);
    }
    layout->addWidget(plainLabel(QStringLiteral("A"), "title", this));
    layout->addWidget(m_a);
    layout->addWidget(swap);
    layout->addWidget(plainLabel(QStringLiteral("B"), "title", this));
    layout->addWidget(m_b);
    layout->addSpacing(14);
    layout->addWidget(m_fromLabel);
    layout->addWidget(m_from);
    layout->addWidget(m_batches);
    layout->addStretch();
    connect(m_a, &QComboBox::activated, this, [this] {
        forgetOffered();
        Q_EMIT chosen();
    });
    connect(m_b, &QComboBox::activated, this, [this] {
        forgetOffered();
        Q_EMIT chosen();
    });
    m_batches->setAccessibleName(Words::tr("Batches that count"));
    connect(m_from, &QComboBox::activated, this, &ComparisonChoice::chosen);
    connect(swap, &QPushButton::clicked, this, [this] { // the ticks don't change
        const QString before = a();
        fill(m_a, b());
        fill(m_b, before);
        Q_EMIT chosen();
    });
    forgetOffered();
}

void ComparisonChoice::forgetOffered()
{
    m_from->clear();
    m_ticks->clear();
    m_fromLabel->hide();
    m_from->hide();
    m_batches->hide();
}

void ComparisonChoice::fill(QComboBox* box, const QString& wanted)
{
    const QSignalBlocker quiet(box);
    box->clear();
    box->addItems(m_batchNames);
    if (!m_batchNames.isEmpty() && m_setupNames.size() > 1)
        box->insertSeparator(box->count());
    if (m_setupNames.size() > 1)
        box->addItems(m_setupNames);
    box->setCurrentIndex(std::max(box->findText(wanted), 0));
}

void ComparisonChoice::setLanes(const results::LanesReview& lanes)
{
    const QString before[] = {a(), b()};
    m_batchNames.clear();
    m_setupNames.clear();
    m_setupOf.clear();
    for (std::size_t i = 0; i < lanes.lanes.size(); ++i) {
        m_setupNames << shown(lanes.lanes[i].setup);
        m_setupOf[m_setupNames.back()] = static_cast<int>(i);
        for (const results::LaneBar& bar : lanes.lanes[i].bars) {
            m_batchNames << shown(bar.batch);
            m_setupOf[m_batchNames.back()] = static_cast<int>(i);
        }
    }
    const bool two = m_setupNames.size() > 1;
    fill(m_a, before[0].isEmpty() && two ? m_setupNames[0] : before[0]);
    fill(m_b, before[1].isEmpty() && two ? m_setupNames[1] : before[1]);
}

void ComparisonChoice::choose(const QString& a, const QString& b)
{
    fill(m_a, a);
    fill(m_b, b);
    forgetOffered();
    Q_EMIT chosen();
}

void ComparisonChoice::clear()
{
    m_a->clear();
    m_b->clear();
    forgetOffered();
}

int ComparisonChoice::offered() const
{
    const auto setups = m_setupNames.size() > 1 ? m_setupNames.size() : 0;
    return static_cast<int>(m_batchNames.size() + setups);
}

QString ComparisonChoice::a() const
{
    return m_a->currentText();
}

QString ComparisonChoice::b() const
{
    return m_b->currentText();
}

results::SideBySideRequest ComparisonChoice::request() const
{
    results::SideBySideRequest request;
    request.a = core(a());
    request.b = core(b());
    if (m_from->currentIndex() > 0)
        request.fromStage = core(m_from->currentText());
    const auto ticks = m_ticks->actions();
    const bool all = std::all_of(ticks.begin(), ticks.end(), [](const QAction* tick) {
        return !tick->isCheckable() || tick->isChecked();
    });
    for (const QAction* tick : ticks) {
        if (!all && tick->isCheckable() && tick->isChecked())
            request.only.push_back(core(tick->data().toString()));
    }
    return request;
}

int ComparisonChoice::setupIndex(const std::string& name) const
{
    const auto found = m_setupOf.find(shown(name));
    return found == m_setupOf.end() ? 0 : found->second;
}

void ComparisonChoice::setOffered(const results::SideBySide& comparison)
{
    offerStages(comparison);
    offerBatches(comparison);
}

void ComparisonChoice::offerStages(const results::SideBySide& comparison)
{
    const QSignalBlocker quiet(m_from);
    m_from->clear();
    m_from->addItem(Words::tr("pitching"));
    for (const std::string& stage : comparison.alignment.offered)
        m_from->addItem(shown(stage));
    if (comparison.alignment.stage)
        m_from->setCurrentText(shown(*comparison.alignment.stage));
    const bool any = !comparison.ofSetups && m_from->count() > 1;
    m_from->setVisible(any);
    m_fromLabel->setVisible(any);
}

void ComparisonChoice::offerBatches(const results::SideBySide& comparison)
{
    m_batches->setVisible(comparison.ofSetups);
    m_ticks->clear();
    const auto offer = [this](const std::string& setup, const std::vector<std::string>& offered,
                              const std::vector<std::string>& taken) {
        m_ticks->addSection(shown(setup));
        for (const std::string& batch : offered) {
            QAction* tick = m_ticks->addAction(shown(batch).replace('&', QStringLiteral("&&")));
            tick->setData(shown(batch));
            tick->setCheckable(true);
            tick->setChecked(std::find(taken.begin(), taken.end(), batch) != taken.end());
            connect(tick, &QAction::toggled, this, &ComparisonChoice::chosen);
        }
    };
    offer(comparison.a, comparison.offeredA, comparison.batchesA);
    offer(comparison.b, comparison.offeredB, comparison.batchesB);
    m_batches->setText(Words::tr("%1 + %2 batches")
                           .arg(comparison.batchesA.size())
                           .arg(comparison.batchesB.size()));
}

} // namespace holdband::ui
