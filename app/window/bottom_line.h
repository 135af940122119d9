// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"

#include <QWidget>

#include <vector>

class QLabel;
class QProgressBar;
class QToolButton;

namespace window {

class SaidLabel;

/// The line below: what just happened, went wrong or is being asked; what lies under the pointer;
/// what is running, how far it is, and a way to stop it. Above it, as long as it is so, what is not
/// kept.
class BottomLine : public QWidget {
    Q_OBJECT
public:
    explicit BottomLine(QWidget* parent = nullptr);

    /// Shows what this runs as well, and stops it on the button.
    void watch(jobs::JobRunner& jobs);

    /// Something to read, in two lines where it is long.
    void say(const QString& sentence, bool isWrong = false);
    /// What is not in the file and why; stays until it is told otherwise. Empty: all is kept.
    void showNotKept(const QString& sentence);
    void showReadOut(const QString& line);
    [[nodiscard]] QString said() const;

private:
    void showRunning();

    std::vector<jobs::JobRunner*> watched_;
    QLabel* notKept_;
    SaidLabel* said_;
    QLabel* readOut_;
    QLabel* running_;
    QProgressBar* bar_;
    QToolButton* stop_;
};

} // namespace window
