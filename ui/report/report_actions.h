// What the window offers of reports: the dialog, and the picture on the clipboard.
#pragma once

#include <QObject>
#include <QStringList>

class QWidget;

namespace holdband::ui {

class Session;

class ReportActions : public QObject {
    Q_OBJECT
public:
    /// `window`: the dialogs' parent.
    ReportActions(Session& session, QWidget* window);

    /// `looked`: the batch that is looked at, or the two.
    void openDialog(const QStringList& looked);
    /// Draws it beside the window and puts it on the clipboard.
    void copyPicture(const QStringList& looked);

Q_SIGNALS:
    void said(const QString& sentence);

private:
    Session* m_session;
    QWidget* m_window;
};

} // namespace holdband::ui
