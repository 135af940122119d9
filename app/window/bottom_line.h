// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QToolButton;

namespace window {

class SaidLabel;

/// The line below: what just happened, went wrong or is being asked; what lies under the pointer;
/// what is running, how far it is, and a way to stop it.
class BottomLine : public QWidget {
    Q_OBJECT
public:
    explicit BottomLine(jobs::JobRunner& jobs, QWidget* parent = nullptr);

    /// Something to read, in two lines where it is long.
    void say(const QString& sentence, bool isWrong = false);
    void showReadOut(const QString& line);
    [[nodiscard]] QString said() const;

private:
    SaidLabel* said_;
    QLabel* readOut_;
    QLabel* running_;
    QProgressBar* bar_;
    QToolButton* stop_;
};

} // namespace window
