// Tooltips are plain text, never markup: names typed by people may contain "<b>" or "<img>".
#pragma once

#include <QObject>
#include <QString>

namespace holdband::ui {

/// The text for a tooltip: unchanged; or, if it is long or could be taken for markup, as rich text
/// with the same contents, which wraps.
QString tip(const QString& words);

/// Applies this to every widget and every cell of a view that has a tooltip. One for the
/// application.
class PlainTips : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace holdband::ui
