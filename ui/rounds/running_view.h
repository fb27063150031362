// The chart of the running batches' energy below the rounds.
#pragma once

#include "ui/charts/picture_view.h"

namespace holdband::ui {

class Session;

/// Hidden if no running batch is metered.
class RunningView : public PictureView {
    Q_OBJECT
public:
    explicit RunningView(Session& session, QWidget* parent = nullptr);

    /// After a change of the logbook: unlike the round's sheet it does not depend on the clock.
    void refresh();
    void clear() { setPicture(nullptr); }

Q_SIGNALS:
    void failed(const QString& sentence);

private:
    Session* m_session;
};

} // namespace holdband::ui
