// The window's contents while there is nothing to show: one sentence, and buttons for the next
// step.
#pragma once

#include "ui/window/first_steps.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace holdband::ui {

class WelcomePage : public QWidget {
    Q_OBJECT
public:
    explicit WelcomePage(bool withSample, QWidget* parent = nullptr);

    enum class State { noLogbook, emptyLogbook };
    void setState(State state, const QString& fileName = {});
    QString sentence() const;
    FirstSteps* steps() const { return m_steps; }

Q_SIGNALS:
    void openWanted();
    void newWanted();
    void sampleWanted();
    void loadWanted();

private:
    QPushButton* addButton(const QString& text, bool main);

    bool m_withSample;
    QLabel* m_title;
    QLabel* m_sentence;
    QPushButton* m_sample;
    QPushButton* m_open;
    QPushButton* m_new;
    QPushButton* m_load;
    FirstSteps* m_steps;
};

} // namespace holdband::ui
