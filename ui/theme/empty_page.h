// What a page shows while there is nothing to show: a faint example of what will be there, one
// sentence and one button, centred.
#pragma once

#include "ui/theme/empty_example.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace holdband::ui {

class EmptyPage : public QWidget {
    Q_OBJECT
public:
    EmptyPage(EmptyExample example, const QString& sentence, const QString& buttonText,
              QWidget* parent = nullptr);

    QString sentence() const;
    QPushButton* button() const { return m_button; }
    /// The part that the example is painted in.
    QRect exampleBox() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    EmptyExample m_example;
    QWidget* m_room; ///< keeps the example's place; nothing to read out
    QLabel* m_sentence;
    QPushButton* m_button;
};

} // namespace holdband::ui
