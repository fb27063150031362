// A span of time that the user marks on a chart: one end is set, the other follows the pointer,
// until it is finished or cleared. Belongs to the window's thread.
#pragma once

#include "core/quantity/instant.h"

#include <QObject>
#include <optional>

namespace holdband::ui {

class SpanMark : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// Whether the next drag marks, instead of moving the charts.
    bool isWanted() const { return m_wanted; }
    void setWanted(bool wanted);

    /// Whether one end is set and the other follows.
    bool isOpen() const { return m_open; }
    /// In order of time; absent while nothing is marked.
    std::optional<Span> span() const;

    void begin(Instant at);
    /// Does nothing unless it is open.
    void follow(Instant at);
    /// A span shorter than `least` is no span: it is cleared.
    void finish(Milliseconds least = Milliseconds{1});
    void clear();

Q_SIGNALS:
    void changed();
    void wantedChanged(bool wanted);
    /// Both ends are set; the span stays marked until it is cleared.
    void finished(const Span& span);

private:
    bool m_wanted = false;
    bool m_open = false;
    std::optional<Span> m_ends; ///< as they were set: the end may be before the start
};

} // namespace holdband::ui
