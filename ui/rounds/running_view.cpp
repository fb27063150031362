#include "ui/rounds/running_view.h"

#include "ui/charts/running_picture.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

namespace holdband::ui {

RunningView::RunningView(Session& session, QWidget* parent)
    : PictureView(Words::tr("Energy of the running batches"), parent), m_session(&session)
{
}

void RunningView::refresh()
{
    m_session->ask<results::RunningEnergy>(
        this, results::reviewRunningEnergy, [this](Result<results::RunningEnergy> energy) {
            if (!energy) {
                clear();
                return Q_EMIT failed(sentence(energy.error()));
            }
            auto picture = std::make_shared<const RunningPicture>(std::move(*energy));
            const QString words = picture->summary();
            setPicture(picture->empty() ? nullptr : std::move(picture), words);
        });
}

} // namespace holdband::ui
