// The window's report functions: the dialog, and the picture for the clipboard.
#pragma once

#include "ui/report/report.h"

#include <QObject>
#include <QStringList>

class QWidget;

namespace holdband::ui {

class Session;

/// The batch that is shown, or the two sides and what is included, or a forecast.
struct Looked {
    QStringList names;
    report::Counting counting = {};
    std::optional<results::NextBatchRequest> nextBatch = {}; ///< a forecast instead
};

class ReportActions : public QObject {
    Q_OBJECT
public:
    /// `window`: the dialogs' parent.
    ReportActions(Session& session, QWidget* window);

    void openDialog(const Looked& looked);
    /// Draws it on another thread and puts it on the clipboard.
    void copyPicture(const Looked& looked);

Q_SIGNALS:
    void said(const QString& sentence);

private:
    Session* m_session;
    QWidget* m_window;
};

} // namespace holdband::ui
