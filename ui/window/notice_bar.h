// A line with a message that the user can close: a refusal, read-only.
#pragma once

#include <QWidget>

class QLabel;

namespace holdband::ui {

class NoticeBar : public QWidget {
    Q_OBJECT
public:
    explicit NoticeBar(QWidget* parent = nullptr);

    void say(const QString& sentence);
    /// With a link to a page of the help, such as "figures.md".
    void sayWithHelp(const QString& sentence, const QString& page);
    void hideBar();
    QString sentence() const;
    /// Hidden where the message has no link.
    QLabel* helpLink() const { return m_help; }

Q_SIGNALS:
    void helpWanted(const QString& page);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_label;
    QLabel* m_help;
};

} // namespace holdband::ui
