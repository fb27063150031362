// The foot of a dialog: what is refused or asked, and the buttons that keep or leave. A question
// is asked once: pressing the button again answers it.
#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;

namespace holdband::ui {

class SaveRow : public QWidget {
    Q_OBJECT
public:
    explicit SaveRow(const QString& saveWords, QWidget* parent = nullptr);

    /// Says why nothing was kept.
    void refuse(const QString& sentence);
    /// True where there is nothing to ask, or just this was asked and the button pressed again.
    bool agreed(const QStringList& questions);
    /// Asked before what was typed is thrown away; true the second time.
    bool leaveAgreed();
    /// Forgets what was refused and asked: something was typed.
    void reset();
    void setBusy(bool busy);

    QString words() const;
    QPushButton* saveButton() const { return m_save; }
    QPushButton* cancelButton() const { return m_cancel; }

Q_SIGNALS:
    void saveWanted();
    void cancelWanted();

private:
    void say(const QString& words);

    QString m_saveWords;
    QStringList m_asked;
    bool m_leaveAsked = false;
    QLabel* m_words;
    QPushButton* m_save;
    QPushButton* m_cancel;
};

} // namespace holdband::ui
