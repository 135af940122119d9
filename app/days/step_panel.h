// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <memory>
#include <vector>

class QScrollArea;
class QVBoxLayout;

namespace days {

class FirstHint;

/// The property of a step's body that names the control (a QWidget*) where the next key belongs
/// once it is opened; without it, its first one.
inline constexpr auto keysGoTo = "keysGoTo";

/// The steps of a day: their heads one below the other, each with its state in a line, and below
/// them the one that is open. So the heads lie still whatever is opened, nothing that is pointed at
/// moves, and the summary of the whole day is always to be seen. Each step keeps how far it was
/// scrolled.
class StepPanel : public QWidget {
    Q_OBJECT
public:
    explicit StepPanel(QWidget* parent = nullptr);
    ~StepPanel() override;

    /// Adds a step below the others; the panel owns `body`. \return its position.
    int addStep(const QString& title, QWidget* body);
    /// What stands below the steps; the panel owns it.
    void setHint(FirstHint* hint);
    /// The line beside the title. A stale step says that something above it changed.
    void setState(int step, const QString& line, bool isStale = false);
    void openStep(int step);
    [[nodiscard]] int openStep() const;
    /// What is typed next goes to the open step.
    void giveKeys();
    [[nodiscard]] int count() const;
    [[nodiscard]] QString titleOf(int step) const;
    [[nodiscard]] QString stateOf(int step) const;

signals:
    void stepOpened(int step);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    struct Step;
    /// By the user: what is typed next goes to the step. One that is open stays so.
    void openByHand(int step);
    void setHeadsStill(bool areStill);

    std::vector<std::unique_ptr<Step>> steps_;
    QVBoxLayout* heads_;
    QScrollArea* scroll_;
    QVBoxLayout* bodies_;
    FirstHint* hint_ = nullptr;
    int open_ = -1;
};

} // namespace days
