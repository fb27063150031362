// A small version of the picture that a report would be, drawn again whenever what it shows, its
// size or its background changes.
#pragma once

#include "ui/report/report.h"

#include <QLabel>

namespace holdband::ui {

class Session;

class PicturePreview : public QLabel {
    Q_OBJECT
public:
    explicit PicturePreview(Session& session, QWidget* parent = nullptr);

    /// Draws it when the session has read what is needed. Other forms than pictures hide it.
    void show(const report::ReportRequest& request);
    /// What is shown now has been drawn.
    bool isReady() const { return !m_waiting; }

Q_SIGNALS:
    void drawn();

private:
    void draw();
    bool isOfSame(const report::ReportRequest& request) const;

    Session* m_session;
    report::ReportRequest m_request;
    std::optional<report::Document> m_document; ///< of the request's subjects
    int m_asked = 0;
    bool m_waiting = false;
};

} // namespace holdband::ui
