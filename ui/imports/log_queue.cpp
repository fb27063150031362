#include "ui/imports/log_queue.h"

#include "core/text/phrase.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QFileInfo>
#include <QPointer>
#include <algorithm>
#include <utility>

namespace holdband::ui {

namespace {

using intake::PreviewedLog;

/// Choices for the file made before its layout changed are not lost.
void retainFileChoices(const intake::ColumnMap& before, intake::ColumnMap& map)
{
    map.zone = before.zone ? before.zone : map.zone;
    map.dateOrder = before.dateOrder ? before.dateOrder : map.dateOrder;
    map.timePattern = before.timePattern ? before.timePattern : map.timePattern;
    map.decimalSign = before.decimalSign ? before.decimalSign : map.decimalSign;
    map.timeUnit = before.timeUnit ? before.timeUnit : map.timeUnit;
}

/// The header of the column of times; empty if there is none.
std::string timeHeaderOf(const intake::LogPreview& preview, const intake::ColumnMap& map)
{
    const auto time = map.columnOf(intake::Meaning::time);
    return time && *time < preview.columns.size() ? preview.columns[*time].header : std::string();
}

/// What a preview gives; the sheets also if there is none.
struct LookedAt {
    std::vector<std::string> sheets;
    Result<PreviewedLog> log;
};

/// The choices for another log of the same shape, which began at another time.
intake::ColumnMap copyForOther(intake::ColumnMap map, const intake::ColumnMap& other)
{
    map.start = other.start;
    return map;
}

Problem stopped()
{
    return {ProblemKind::data,
            Phrase::tr("it was stopped; nothing of it was stored"),
            {},
            Phrase::tr("change a choice, or choose the file again")};
}

void refuse(LogState& state, Problem problem)
{
    state.stage = LogStage::asking;
    state.problem = std::move(problem);
}

} // namespace

intake::ImportOptions LogState::options(bool dryRun) const
{
    intake::ImportOptions options;
    options.path = source.path;
    options.text = source.text;
    options.sheet = source.sheet;
    options.map = map;
    if (preview)
        options.layout = preview->layout;
    options.registerDrop = registerDrop;
    if (report && !source.text)
        options.lookedAt = report->file.sha256;
    options.dryRun = dryRun;
    return options;
}

LogQueue::LogQueue(Session& session, QObject* parent) : QObject(parent), m_session(&session) {}

void LogQueue::add(const QStringList& paths)
{
    for (const QString& path : paths) {
        LogState state;
        state.source.path = core(path);
        state.name = QFileInfo(path).fileName();
        m_logs.push_back(std::move(state));
        enqueue(size() - 1, Work::preview);
    }
    Q_EMIT changed(-1);
    next();
}

void LogQueue::addText(const QByteArray& text, const QString& name)
{
    LogState state;
    state.source = {core(name), std::make_shared<const std::string>(text.toStdString())};
    state.name = name;
    m_logs.push_back(std::move(state));
    enqueue(size() - 1, Work::preview);
    Q_EMIT changed(-1);
    next();
}

void LogQueue::enqueue(int index, Work work)
{
    std::erase_if(m_tasks, [index](const Task& task) { return task.index == index; });
    m_tasks.push_back({index, work});
}

void LogQueue::next()
{
    if (m_running || m_tasks.empty())
        return;
    const Task task = m_tasks.front();
    m_tasks.pop_front();
    m_running = true;
    log(task.index).stage = task.work == Work::save ? LogStage::saving : LogStage::looking;
    log(task.index).problem.reset();
    Q_EMIT changed(task.index);
    if (task.work == Work::look || task.work == Work::save)
        run(task.index, task.work == Work::look);
    else
        preview(task.index, task.work);
}

void LogQueue::preview(int index, Work work)
{
    const LogState& state = log(index);
    m_session->ask<LookedAt>(
        this,
        [source = state.source, map = state.map, work, sheets = state.sheets,
         shape = state.preview ? state.preview->shape : std::string()](
            const store::LogbookFile& file) -> Result<LookedAt> {
            return LookedAt{
                sheets.empty() || work == Work::again ? intake::sheetsOf(source) : sheets,
                work == Work::guess   ? intake::detectAgain(file, source)
                : work == Work::again ? intake::openChangedPreview(file, source, map, shape)
                                      : intake::openPreview(file, source, map.layout)};
        },
        [this, index, work, generation = m_generation](Result<LookedAt> looked) {
            if (generation != m_generation)
                return;
            m_running = false;
            if (looked)
                log(index).sheets = std::move(looked->sheets);
            if (looked && looked->log)
                return takePreview(index, work, std::move(*looked->log));
            log(index).problem = looked ? looked->log.error() : looked.error();
            settle(index);
        });
}

void LogQueue::takePreview(int index, Work work, PreviewedLog looked)
{
    LogState& state = log(index);
    if (work == Work::relayOut) {
        retainFileChoices(state.map, looked.map);
        if (timeHeaderOf(*state.preview, state.map) == timeHeaderOf(looked.preview, looked.map))
            looked.map.start = state.map.start;
    }
    state.preview = std::move(looked.preview);
    state.map = std::move(looked.map);
    state.remembered = looked.remembered;
    state.report.reset(); // it was made with other columns
    Q_EMIT changed(index);
    m_tasks.push_front({index, Work::look});
    next();
}

void LogQueue::run(int index, bool dryRun)
{
    auto cancelled = std::make_shared<std::atomic<bool>>(false);
    m_cancelled = cancelled;
    const QPointer<LogQueue> self(this);
    auto progress = [cancelled, self](double share) {
        if (!cancelled->load() && self)
            QMetaObject::invokeMethod(
                self.data(), [self, share] { Q_EMIT self->progressed(share); },
                Qt::QueuedConnection);
        return !cancelled->load();
    };
    m_session->change<intake::ImportReport>(
        this,
        [options = log(index).options(dryRun), progress,
         preview = *log(index).preview](const store::LogbookFile& file) {
            auto report = intake::importLog(file, options, progress);
            if (report && !options.dryRun && !report->fileChanged) {
                intake::ColumnMap map = *options.map;
                map.dateOrderFound = report->file.dateOrder;
                intake::rememberMap(file, preview, map);
            }
            return report;
        },
        [this, index, dryRun, generation = m_generation](Result<intake::ImportReport> report) {
            if (generation == m_generation)
                takeReport(index, std::move(report), dryRun);
        });
}

void LogQueue::takeReport(int index, Result<intake::ImportReport> report, bool dryRun)
{
    m_running = false;
    LogState& state = log(index);
    if (m_cancelling && (!report || report->fileChanged))
        report = failure(stopped());
    state.cancelledLate = std::exchange(m_cancelling, false) && report.has_value();
    if (report && report->fileChanged) {
        state.changedSince = true;
        m_tasks.push_front({index, Work::again});
        return next();
    }
    if (report)
        state.report = std::make_shared<const intake::ImportReport>(std::move(*report));
    else
        state.problem = report.error();
    if (state.problem)
        state.stage = LogStage::asking;
    else if (!dryRun)
        state.stage = LogStage::saved;
    else
        state.stage = state.report->added() > 0 ? LogStage::ready : LogStage::nothingNew;
    settle(index);
    if (state.stage == LogStage::saved)
        Q_EMIT saved(index);
}

void LogQueue::settle(int index)
{
    if (log(index).problem)
        log(index).stage = LogStage::asking;
    Q_EMIT changed(index);
    Q_EMIT settled(index);
    next();
}

void LogQueue::choose(int index, const intake::ColumnMap& map)
{
    if (log(index).stage == LogStage::saved || !log(index).preview)
        return;
    log(index).map = map;
    log(index).remembered = false;
    enqueue(index, workAfter(index));
    chooseForAlike(index);
    next();
}

LogQueue::Work LogQueue::workAfter(int index)
{
    return log(index).preview->asked == log(index).map.layout ? Work::look : Work::relayOut;
}

void LogQueue::chooseForAlike(int index)
{
    for (int i = 0; i < size(); ++i) {
        LogState& other = log(i);
        if (i == index || !other.preview || other.preview->shape != log(index).preview->shape ||
            other.stage == LogStage::saved)
            continue;
        other.map = copyForOther(log(index).map, other.map);
        enqueue(i, workAfter(i));
    }
}

void LogQueue::chooseSheet(int index, const QString& sheet)
{
    LogState& state = log(index);
    if (state.isBusy())
        return;
    LogState other;
    other.source = state.source;
    other.source.sheet = core(sheet);
    other.name = state.name;
    other.sheets = state.sheets;
    state = std::move(other);
    enqueue(index, Work::preview);
    Q_EMIT changed(index);
    next();
}

void LogQueue::chooseRegisterDrop(int index, MeterEvent event)
{
    log(index).registerDrop = event;
    enqueue(index, Work::look);
    next();
}

void LogQueue::forgetMap(int index)
{
    enqueue(index, Work::guess);
    next();
}

void LogQueue::save(int index)
{
    if (log(index).stage != LogStage::ready)
        return;
    log(index).changedSince = false;
    enqueue(index, Work::save);
    next();
}

void LogQueue::importReady()
{
    for (int i = 0; i < size(); ++i) {
        if (log(i).stage == LogStage::ready) {
            log(i).changedSince = false;
            enqueue(i, Work::save);
        }
    }
    next();
}

int LogQueue::readyCount() const
{
    return static_cast<int>(std::count_if(m_logs.begin(), m_logs.end(), [](const LogState& state) {
        return state.stage == LogStage::ready;
    }));
}

void LogQueue::cancel()
{
    if (m_cancelled)
        m_cancelled->store(true);
    m_tasks.clear();
    m_cancelling = false;
    for (LogState& state : m_logs) {
        if (state.stage == LogStage::saving)
            m_cancelling = m_running;
        else if (state.stage == LogStage::looking || state.stage == LogStage::waiting)
            refuse(state, stopped());
    }
    if (!m_cancelling) { // not cancelled meanwhile
        m_cancelled.reset();
        ++m_generation;
        m_running = false;
    }
    Q_EMIT changed(-1);
}

void LogQueue::clear()
{
    cancel();
    ++m_generation;
    m_running = m_cancelling = false;
    m_logs.clear();
    Q_EMIT changed(-1);
}

} // namespace holdband::ui
