#include "ui/report/report_actions.h"

#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "ui/report/report_dialog.h"
#include "ui/session/session.h"
#include "ui/words/words.h"

#include <QClipboard>
#include <QDesktopServices>
#include <QGuiApplication>
#include <QImage>
#include <QUrl>

namespace holdband::ui {

namespace {

Result<ReportOffer> readOffer(const store::LogbookFile& file)
{
    auto batches = store::readBatches(file);
    HOLDBAND_TRY(batches);
    auto setups = store::readSetups(file);
    HOLDBAND_TRY(setups);
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    ReportOffer offer;
    offer.us = settings->units == UnitSystem::us;
    for (const Batch& batch : *batches)
        offer.batches << shown(batch.name);
    for (const Setup& setup : *setups)
        offer.setups << shown(setup.name);
    return offer;
}

} // namespace

ReportActions::ReportActions(Session& session, QWidget* window)
    : QObject(window), m_session(&session), m_window(window)
{
}

void ReportActions::openDialog(const Looked& looked)
{
    if (!m_session->isOpen())
        return;
    m_session->ask<ReportOffer>(this, readOffer, [this, looked](Result<ReportOffer> offer) {
        if (!offer)
            return Q_EMIT said(sentence(offer.error()));
        if (offer->batches.isEmpty() && offer->setups.isEmpty())
            return Q_EMIT said(Words::tr("There is nothing to report yet: the logbook has no "
                                         "setup and no batch."));
        offer->chosen = looked.names;
        offer->counting = looked.counting;
        offer->nextBatch = looked.nextBatch;
        auto* dialog = new ReportDialog(*m_session, *offer, m_window);
        connect(dialog, &ReportDialog::said, this, &ReportActions::said);
        connect(dialog, &ReportDialog::openWanted, this,
                [](const QString& path) { QDesktopServices::openUrl(QUrl::fromLocalFile(path)); });
        dialog->open();
    });
}

void ReportActions::copyPicture(const Looked& looked)
{
    if (!m_session->isOpen() || (looked.names.isEmpty() && !looked.nextBatch))
        return;
    std::vector<std::string> names;
    for (const QString& name : looked.names)
        names.push_back(core(name));
    // It is drawn here and not by the session's worker, because only this thread may use charts.
    m_session->ask<report::Document>(
        this,
        [=](const store::LogbookFile& file) {
            return looked.nextBatch ? report::composeForecast(file, *looked.nextBatch)
                                    : report::compose(file, names, looked.counting);
        },
        [this, looked](Result<report::Document> document) {
            if (!document)
                return Q_EMIT said(sentence(document.error()));
            const QImage image =
                report::asImage(*document, report::landscape, schemeOf(m_window->palette()));
            QGuiApplication::clipboard()->setImage(image);
            Q_EMIT said(Words::tr("The picture of %1 is on the clipboard, %2 × %3.")
                            .arg(looked.nextBatch ? Words::tr("the next batch")
                                                  : looked.names.join(Words::tr(" and ")))
                            .arg(image.width())
                            .arg(image.height()));
        });
}

} // namespace holdband::ui
