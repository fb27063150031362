// The bottom row of a dialog: errors or questions, and the buttons to save or cancel. A question is
// asked once: pressing the button again confirms it.
#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;

namespace holdband::ui {

class SaveRow : public QWidget {
    Q_OBJECT
public:
    explicit SaveRow(const QString& saveText, QWidget* parent = nullptr);

    /// Shows why nothing was saved.
    void refuse(const QString& sentence);
    /// True if there is nothing to ask, or the same questions were asked and the button was pressed
    /// again.
    bool agreed(const QStringList& questions);
    /// Asks before typed text is discarded; true the second time.
    bool leaveAgreed();
    /// Clears errors and questions: something was typed.
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

    QString m_saveText;
    QStringList m_asked;
    bool m_leaveAsked = false;
    QLabel* m_words;
    QPushButton* m_save;
    QPushButton* m_cancel;
};

} // namespace holdband::ui
