#include "ui/report/picture_preview.h"

#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QImage>
#include <QPixmap>

namespace holdband::ui {

namespace {

constexpr QSize most(360, 240); ///< in device-independent pixels

bool isPicture(report::Form form)
{
    return form == report::Form::png || form == report::Form::svg;
}

} // namespace

PicturePreview::PicturePreview(Session& session, QWidget* parent)
    : QLabel(parent), m_session(&session)
{
    setAlignment(Qt::AlignCenter);
    setFixedHeight(most.height());
    setAccessibleName(Words::tr("Preview of the picture"));
    hide();
}

bool PicturePreview::isOfSame(const report::ReportRequest& request) const
{
    return m_document && m_request.names == request.names &&
           m_request.nextBatch.has_value() == request.nextBatch.has_value() &&
           m_request.counting.fromStage == request.counting.fromStage &&
           m_request.counting.only == request.counting.only;
}

void PicturePreview::show(const report::ReportRequest& request)
{
    const bool same = isOfSame(request);
    m_request = request;
    setVisible(isPicture(request.form));
    if (!isPicture(request.form))
        return;
    if (same)
        return draw();
    m_document.reset();
    clear();
    m_waiting = true;
    m_session->ask<report::Document>(
        this,
        [request](const store::LogbookFile& file) {
            return request.nextBatch ? report::composeForecast(file, *request.nextBatch)
                                     : report::compose(file, request.names, request.counting);
        },
        [this, asked = ++m_asked](Result<report::Document> document) {
            if (asked != m_asked)
                return;
            m_waiting = false;
            if (!document)
                return setText(sentence(document.error()));
            m_document = std::move(*document);
            draw();
        });
}

/// Only this thread may use charts.
void PicturePreview::draw()
{
    const QSize size =
        m_request.format.size.scaled(most, Qt::KeepAspectRatio) * devicePixelRatioF();
    // Drawn in its real proportions of type, then made small.
    const QImage whole =
        report::asImage(*m_document, m_request.format.size / 2, m_request.format.scheme);
    QPixmap small =
        QPixmap::fromImage(whole.scaled(size, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    small.setDevicePixelRatio(devicePixelRatioF());
    setPixmap(small);
    setAccessibleDescription(m_document->headline);
    Q_EMIT drawn();
}

} // namespace holdband::ui
