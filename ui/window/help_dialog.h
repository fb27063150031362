// The help: pages that come with the program and need no network.
#pragma once

#include <QDialog>

class QTextBrowser;

namespace holdband::ui {

class HelpDialog : public QDialog {
    Q_OBJECT
public:
    explicit HelpDialog(QWidget* parent = nullptr);

    /// `page`: "rounds.md"; if it doesn't exist, the contents are shown.
    void showPage(const QString& page);
    QTextBrowser* text() const { return m_text; }
    const QString& page() const { return m_page; }

private:
    void follow(const QUrl& link);

    QTextBrowser* m_text;
    QString m_page;
};

/// The help page for a dialog.
QString helpFor(const QDialog& dialog);

/// Opens the help, or switches the open one to that page.
void openHelp(QWidget& window, const QString& page);

} // namespace holdband::ui
