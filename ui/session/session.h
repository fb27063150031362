// The open logbook as the window sees it: hands out reviews and keeps what was typed or imported.
// All answers come later, in the window's thread; nothing here blocks it. Two workers: one holds
// the logbook for writing, the other reads, so that pages open while a long import runs.
#pragma once

#include "ui/session/worker.h"

#include "core/problem.h"

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

    /// Opens it for writing; where another program holds it, for reading, and says so in
    /// readOnlyBecause(). On a Problem the logbook that was open stays open.
    Done open(const QString& path);
    /// The same beside the window, which goes on meanwhile: an older format is brought up to date,
    /// which copies it first. `done` is called in this thread; of several calls only the last
    /// one's logbook is taken.
    void openBeside(const QString& path, std::function<void(Done)> done);
    bool opening() const { return m_opening > 0; }
    Done create(const QString& path, const LogbookSettings& settings);

    /// Lets go of the logbook; what was asked and not answered is dropped.
    void close();

    bool isOpen() const { return m_reader != nullptr; }
    bool readOnly() const { return isOpen() && !m_writer; }
    const QString& readOnlyBecause() const { return m_readOnlyBecause; }
    const QString& path() const { return m_path; }
    Instant now() const { return m_clock(); }
    /// Nothing is asked that has not been answered.
    bool idle() const { return m_pending == 0 && m_opening == 0; }

    /// Runs `work` on the reading worker and hands its result to `deliver` in this thread, unless
    /// `context` is gone or another logbook was opened meanwhile.
    template <typename T>
    void ask(QObject* context, std::function<Result<T>(const store::LogbookFile&)> work,
             std::function<void(Result<T>)> deliver)
    {
        post<T>(m_reader.get(), context, std::move(work), std::move(deliver));
    }

    /// The same for something that changes the logbook. Only where !readOnly().
    template <typename T>
    void change(QObject* context, std::function<Result<T>(const store::LogbookFile&)> work,
                std::function<void(Result<T>)> deliver)
    {
        post<T>(m_writer.get(), context, std::move(work), std::move(deliver));
    }

    /// To be called by whoever changed something, once it is kept.
    void announceChange() { Q_EMIT changed(); }

Q_SIGNALS:
    void opened();
    void changed();
    void idleChanged(bool idle);
    /// Before the first change of a day.
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
            auto result = std::make_shared<Result<T>>(work(file));
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

    /// What opening a logbook brings; without a writer it is for reading only.
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
    std::vector<std::unique_ptr<Worker>> m_retired; ///< finish the job at work, of another logbook
    int m_generation = 0;
    int m_opening = 0;
    int m_openingCall = 0;
    int m_pending = 0;
};

} // namespace holdband::ui
