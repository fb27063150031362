// Tips are words, never markup: names that people give may hold "<b>" or "<img>".
#pragma once

#include <QObject>
#include <QString>

namespace holdband::ui {

/// The words as a tip shows them: as they are; where they are long, or could be taken for markup,
/// as rich text that says the same, which wraps.
QString tip(const QString& words);

/// Sees to it for every widget and every cell of a view that has a tip. One for the application.
class PlainTips : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace holdband::ui
