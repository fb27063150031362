// How long things ease into their new place. Off until the program allows it, so that pictures and
// tests never wait.
#pragma once

class QWidget;

namespace holdband::ui {

void setMotion(bool on);
/// 120 while motion is on, else 0.
int motionMs();

/// Unfolds or folds a part of a page, eased. It is visible until it is folded.
void easeOpen(QWidget& part, bool open);

} // namespace holdband::ui
