// The open logbook for the window: provides reviews, and saves what was typed or imported. All
// results arrive later, in the window's thread; nothing here blocks it. Two workers: one holds the
// logbook for writing, the other reads, so that pages can load while a long import runs.
#pragma once

#include "ui/session/worker.h"

#include "core/problem.h"
#include "core/text/memory.h"

#include <QObject>
#include <QPointer>
#include <QString>
#include <functional>
#include <memory>
#include <vector>

namespace holdband::ui {

class Session : public QObject {
    Q_OBJECT
public:
    explicit Session(store::Clock clock = store::systemNow, QObject* parent = nullptr);
    ~Session() override;

    /// Opens it for writing; if another program holds it, for reading, and readOnlyBecause() gives
    /// the reason. On a Problem the previous logbook remains open.
    Done open(const QString& path);
    /// The same in the background: an older format is migrated, which makes a copy first. `done` is
    /// called in this thread; after several calls only the last one's logbook is used.
    void openInBackground(const QString& path, std::function<void(Done)> done);
    bool opening() const { return m_opening > 0; }
    Done create(const QString& path, const LogbookSettings& settings);

    /// Closes the logbook; pending requests are dropped.
    void close();

    bool isOpen() const { return m_reader != nullptr; }
    bool readOnly() const { return isOpen() && !m_writer; }
    const QString& readOnlyBecause() const { return m_readOnlyBecause; }
    const QString& path() const { return m_path; }
    Instant now() const { return m_clock(); }
    /// Whether no request is pending.
    bool idle() const { return m_pending == 0 && m_opening == 0; }

    /// Runs `work` on the reading worker and hands its result to `deliver` in this thread, unless
    /// `context` is gone or another logbook was opened meanwhile.
    template <typename T>
    void ask(QObject* context, std::function<Result<T>(const store::LogbookFile&)> work,
             std::function<void(Result<T>)> deliver)
    {
        post<T>(m_reader.get(), context, std::move(work), std::move(deliver));
    }

    /// The same for work that changes the logbook. Only if !readOnly().
    template <typename T>
    void change(QObject* context, std::function<Result<T>(const store::LogbookFile&)> work,
                std::function<void(Result<T>)> deliver)
    {
        post<T>(m_writer.get(), context, std::move(work), std::move(deliver));
    }

    /// Call after a change was saved.
    void announceChange() { Q_EMIT changed(); }

Q_SIGNALS:
    void opened();
    void changed();
    void idleChanged(bool idle);
    /// A copy was made, before the first change of a day.
    void backedUp();
    void backupFailed(const holdband::Problem& problem);

private:
    template <typename T>
    void post(Worker* worker, QObject* context,
              std::function<Result<T>(const store::LogbookFile&)> work,
              std::function<void(Result<T>)> deliver)
    {
        if (!worker)
            return;
        count(+1);
        worker->post([this, context = QPointer<QObject>(context), generation = m_generation,
                      work = std::move(work),
                      deliver = std::move(deliver)](const store::LogbookFile& file) {
            auto result = std::make_shared<Result<T>>(withinMemory([&] { return work(file); }));
            QMetaObject::invokeMethod(
                this,
                [this, context, generation, deliver, result] {
                    if (generation != m_generation)
                        return;
                    if (context)
                        deliver(std::move(*result));
                    count(-1);
                },
                Qt::QueuedConnection);
        });
    }

    /// The result of opening a logbook; without a writer it is read-only.
    struct Files {
        std::unique_ptr<store::LogbookFile> writer;
        std::unique_ptr<store::LogbookFile> reader;
        QString readOnlyBecause;
    };
    static Result<Files> openFiles(const QString& path, const store::Clock& clock);

    void useBackups(store::LogbookFile& writer);
    void count(int by);
    void countOpening(int by);
    void take(const QString& path, Files files);
    void retire(std::unique_ptr<Worker> worker);

    store::Clock m_clock;
    std::unique_ptr<Worker> m_writer;
    std::unique_ptr<Worker> m_reader;
    QString m_path;
    QString m_readOnlyBecause;
    /// Of another logbook, finishing their running job.
    std::vector<std::unique_ptr<Worker>> m_retired;
    int m_generation = 0;
    int m_opening = 0;
    int m_openingCall = 0;
    int m_pending = 0;
};

} // namespace holdband::ui
