// A line of text that says how it came about: in its tooltip, and on F1 while it has the focus.
#pragma once

#include <QLabel>

namespace holdband::ui {

class ExplainedLabel : public QLabel {
    Q_OBJECT
public:
    explicit ExplainedLabel(QWidget* parent = nullptr);

    /// Without a text it is hidden and takes no focus.
    void setWords(const QString& text, const QString& explanation);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
};

} // namespace holdband::ui
