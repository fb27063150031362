#include "ui/imports/imports_page.h"

#include "core/intake/import.h"
#include "core/store/equipment.h"
#include "core/store/readings.h"
#include "ui/imports/import_choices.h"
#include "ui/imports/import_words.h"
#include "ui/session/session.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

struct HeadAndTargets {
    LogHead head;
    QStringList targets;
};

/// The file's columns, and what they can be.
Result<HeadAndTargets> readColumns(const store::LogbookFile& logbook, const std::string& path)
{
    HeadAndTargets all;
    auto head = readHead(path);
    if (!head)
        return failure(head.error());
    all.head = std::move(*head);
    auto sensors = store::readSensors(logbook);
    if (!sensors)
        return failure(sensors.error());
    auto meters = store::readMeters(logbook);
    if (!meters)
        return failure(meters.error());
    for (const Sensor& sensor : *sensors)
        all.targets << shown(sensor.name);
    for (const Meter& meter : *meters)
        all.targets << shown(meter.name);
    return all;
}

} // namespace

ImportsPage::ImportsPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(&session),
      m_hint(makeLabel(QStringLiteral("Drop a log anywhere in the window, or choose a file. It is "
                                      "looked at first; nothing is kept without your word."),
                       "muted", this)),
      m_message(makeLabel({}, "muted", this)),
      m_choose(new QPushButton(QStringLiteral("&Choose a file…"), this)),
      m_keep(new QPushButton(QStringLiteral("&Keep"), this)),
      m_cancel(new QPushButton(QStringLiteral("Cancel"), this)), m_progress(new QProgressBar(this)),
      m_choices(new ImportChoices(this)),
      m_counts(new TableCard(QStringLiteral("What would be kept"), 0, this)),
      m_rejected(new TableCard(QStringLiteral("Left out"), 3, this)),
      m_past(new TableCard(QStringLiteral("Past imports"), 2, this)),
      m_reasons(new NotesCard(QStringLiteral("How the file was read"), this, Card::Tone::plain))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    layout->addWidget(makeTop());
    layout->addWidget(makeBody(), 1);
    m_past->hide();
    setRole(m_keep, "main");
    m_progress->setRange(0, 1000);
    m_progress->setAccessibleName(QStringLiteral("Share done"));
    connect(m_choose, &QPushButton::clicked, this, &ImportsPage::chooseWanted);
    connect(m_keep, &QPushButton::clicked, this, &ImportsPage::keep);
    connect(m_cancel, &QPushButton::clicked, this, &ImportsPage::cancel);
    connect(m_choices, &ImportChoices::changed, this, &ImportsPage::lookAgain);
    clear();
}

QWidget* ImportsPage::makeTop()
{
    auto* card = new Card({}, this);
    auto* row = new QHBoxLayout;
    row->addWidget(m_choose);
    row->addWidget(m_hint, 1);
    card->contents()->addLayout(row);
    card->contents()->addWidget(m_message);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_keep);
    buttons->addWidget(m_cancel);
    buttons->addWidget(m_progress, 1);
    buttons->addStretch();
    card->contents()->addLayout(buttons);
    card->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    return card;
}

QWidget* ImportsPage::makeBody()
{
    auto* inner = new QWidget;
    inner->setObjectName(QStringLiteral("inner"));
    auto* layout = new QHBoxLayout(inner);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spacing::gap);
    auto* right = new QVBoxLayout;
    right->setSpacing(spacing::gap);
    right->addWidget(m_counts);
    right->addWidget(m_reasons);
    right->addWidget(m_rejected);
    right->addWidget(m_past);
    right->addStretch();
    auto* left = new QVBoxLayout;
    left->addWidget(m_choices);
    left->addStretch();
    layout->addLayout(left, 2);
    layout->addLayout(right, 3);
    auto* area = new QScrollArea(this);
    area->setWidget(inner);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

QString ImportsPage::message() const
{
    return m_message->text();
}

QString ImportsPage::subtitle() const
{
    return m_path.isEmpty() ? QString() : QFileInfo(m_path).fileName();
}

bool ImportsPage::canKeep() const
{
    return m_keep->isVisibleTo(this) && m_keep->isEnabled();
}

void ImportsPage::say(const QString& words, bool trouble)
{
    setRole(m_message, trouble ? "warn" : "title");
    m_message->setText(words);
    m_message->setAccessibleName(words);
    m_message->setVisible(!words.isEmpty());
}

void ImportsPage::setStage(Stage stage)
{
    m_stage = stage;
    const bool busy = stage == Stage::looking || stage == Stage::keeping;
    m_keep->setVisible(stage == Stage::ready);
    m_cancel->setVisible(busy || stage == Stage::ready);
    m_progress->setVisible(busy);
    m_progress->setValue(0);
    m_choose->setEnabled(!busy);
    m_choices->setEnabled(!busy);
}

void ImportsPage::clear()
{
    cancel();
    m_path.clear();
    m_choices->reset();
    m_choices->hide();
    for (TableCard* card : {m_counts, m_rejected}) {
        card->setWords({});
        card->hide();
    }
    m_reasons->setSentences({});
    setStage(Stage::idle);
    say({}, false);
}

void ImportsPage::refresh()
{
    m_session->ask<std::vector<store::RawImport>>(
        this, store::readImports, [this](Result<std::vector<store::RawImport>> imports) {
            if (!imports)
                return say(sentence(imports.error()), true);
            m_past->setWords(pastTable(*imports));
            m_past->setVisible(!imports->empty());
        });
}

void ImportsPage::look(const QString& path)
{
    clear();
    if (m_session->readOnly())
        return say(QStringLiteral("The logbook is open for reading only, so no log can be kept."),
                   true);
    begin(path);
}

void ImportsPage::begin(const QString& path)
{
    m_path = path;
    m_session->ask<HeadAndTargets>(
        this,
        [name = core(path)](const store::LogbookFile& file) { return readColumns(file, name); },
        [this, path](Result<HeadAndTargets> read) {
            if (path != m_path)
                return;
            if (read)
                m_choices->setColumns(read->head, read->targets);
            run(true);
        });
}

void ImportsPage::lookAgain()
{
    if (!m_path.isEmpty() && m_stage != Stage::looking && m_stage != Stage::keeping)
        run(true);
}

intake::ImportOptions ImportsPage::options(bool dryRun) const
{
    intake::ImportOptions options;
    options.path = core(m_path);
    options.dryRun = dryRun;
    m_choices->fillIn(options);
    return options;
}

void ImportsPage::run(bool dryRun)
{
    setStage(dryRun ? Stage::looking : Stage::keeping);
    m_choices->show();
    auto cancelled = std::make_shared<std::atomic<bool>>(false);
    m_cancelled = cancelled;
    QPointer<QProgressBar> bar = m_progress;
    auto progress = [cancelled, bar, page = QPointer<ImportsPage>(this)](double share) {
        if (page)
            QMetaObject::invokeMethod(
                page.data(),
                [bar, share] {
                    if (bar)
                        bar->setValue(static_cast<int>(share * 1000));
                },
                Qt::QueuedConnection);
        return !cancelled->load();
    };
    m_session->change<intake::ImportReport>(
        this,
        [wanted = options(dryRun), progress](const store::LogbookFile& file) {
            return intake::importLog(file, wanted, progress);
        },
        [this, dryRun, cancelled](Result<intake::ImportReport> report) {
            if (m_cancelled == cancelled)
                takeReport(std::move(report), dryRun);
        });
}

void ImportsPage::takeReport(Result<intake::ImportReport> report, bool dryRun)
{
    if (!report) {
        setStage(Stage::done);
        say(problemWords(report.error()), true);
        m_counts->hide();
        m_rejected->hide();
        m_reasons->setSentences({});
        m_choices->pointAt(decisionIn(report.error()));
        Q_EMIT looked();
        return;
    }
    showReport(*report);
    if (dryRun) {
        m_choices->showTaken(*report);
        setStage(report->added() > 0 ? Stage::ready : Stage::done);
        say(report->added() > 0
                ? countsSentence(*report)
                : countsSentence(*report) + QStringLiteral(" There is nothing new to keep."),
            false);
        m_keep->setText(QStringLiteral("&Keep %1 readings").arg(countText(report->added())));
        if (m_stage == Stage::ready)
            m_keep->setFocus();
        Q_EMIT looked();
        return;
    }
    setStage(Stage::done);
    say(QStringLiteral("Kept. ") + countsSentence(*report), false);
    m_counts->setTitle(QStringLiteral("What was kept"));
    Q_EMIT kept();
    m_session->announceChange();
}

void ImportsPage::showReport(const intake::ImportReport& report)
{
    m_counts->setTitle(QStringLiteral("What would be kept"));
    m_counts->setWords(countsTable(report));
    m_counts->show();
    m_reasons->setSentences(reasonsOf(report));
    const bool any = report.file.rejectedTotal > 0;
    m_rejected->setWords(rejectedTable(report));
    m_rejected->setVisible(any);
    const auto more =
        report.file.rejectedTotal - static_cast<std::int64_t>(m_rejected->model()->rowCount());
    m_rejected->setRemark(more > 0 ? QStringLiteral("and %1 more").arg(countText(more))
                                   : QString());
}

void ImportsPage::keep()
{
    if (m_stage == Stage::ready)
        run(false);
}

void ImportsPage::cancel()
{
    if (m_cancelled)
        m_cancelled->store(true);
    m_cancelled.reset();
    if (m_stage == Stage::idle || m_stage == Stage::done)
        return;
    setStage(Stage::done);
    say(QStringLiteral("Nothing was kept."), false);
}

} // namespace holdband::ui
