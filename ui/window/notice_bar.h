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
    void hideBar();
    QString sentence() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_label;
};

} // namespace holdband::ui
