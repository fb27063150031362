// A message over the lower edge of the window: what was done, which goes by itself after some
// seconds, or what the user should know, which stays until it is closed. It moves nothing.
#pragma once

#include <QWidget>

class QLabel;
class QTimer;

namespace holdband::ui {

class NoticeBar : public QWidget {
    Q_OBJECT
public:
    /// `over`: the widget over whose lower edge it is shown.
    explicit NoticeBar(QWidget* over);

    /// Stays until it is closed, or another message comes.
    void say(const QString& sentence);
    /// Goes by itself, but not while the pointer is on it.
    void sayInPassing(const QString& sentence);
    /// Stays, with a link to a page of the help, such as "figures.md".
    void sayWithHelp(const QString& sentence, const QString& page);
    void hideBar();
    QString sentence() const;
    /// Hidden where the message has no link.
    QLabel* helpLink() const { return m_help; }
    QTimer* timer() const { return m_timer; }

Q_SIGNALS:
    void helpWanted(const QString& page);

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void place();

    QLabel* m_label;
    QLabel* m_help;
    QTimer* m_timer;
    bool m_passing = false;
};

} // namespace holdband::ui
