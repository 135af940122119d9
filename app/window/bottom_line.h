// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QToolButton;

namespace window {

/// The line below: what just happened, went wrong or is being asked; what lies under the pointer;
/// what is running, how far it is, and a way to stop it.
class BottomLine : public QWidget {
    Q_OBJECT
public:
    explicit BottomLine(jobs::JobRunner& jobs, QWidget* parent = nullptr);

    /// Something to read; the whole of it is in the tooltip where the line is short.
    void say(const QString& sentence, bool isWrong = false);
    void showReadOut(const QString& line);
    [[nodiscard]] QString said() const { return whole_; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();

    QLabel* said_;
    QLabel* readOut_;
    QLabel* running_;
    QProgressBar* bar_;
    QToolButton* stop_;
    QString whole_;
};

} // namespace window
