// SPDX-License-Identifier: GPL-3.0-or-later
// Where the water is kept, as far as the user has to do with it: its name and place, what is not
// kept, and leaving it.
#include "app/days/theme_inks.h"
#include "app/edits/change_facts.h"
#include "app/window/ask_place.h"
#include "app/window/bottom_line.h"
#include "app/window/go_back.h"
#include "app/window/kept_words.h"
#include "app/window/main_window.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

#include <QCloseEvent>
#include <QDir>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include <chrono>

namespace window {

QString MainWindow::usualUnnamedFolder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("waters"));
}

void MainWindow::showNotKept() {
    const open_water::Keeper& keeper = open_.keeper();
    bottom_->showNotKept(notKeptWords(keeper.unkept(), keeper.whyNot(), !keeper.isReadOnly()));
}

void MainWindow::takeMove(const QString& from) {
    preferences_.addRecentWater(open_.path());
    if (!from.isEmpty()) {
        bottom_->say(tr("The water lives in %1 from now on.").arg(open_.path()));
    }
    showName();
}

void MainWindow::nameWater() {
    if (!open_.isOpen()) {
        bottom_->say(tr("There is no water yet: bring something in first."), true);
        return;
    }
    const QString path = askPlace(this, tr("Name this water: where is its file to be?"));
    if (path.isEmpty()) {
        return;
    }
    const std::string name = QFileInfo(path).completeBaseName().toStdString();
    if (open_.water()->name.empty()) {
        edits::changeFacts(open_, tr("Name water"),
                           [&](water::Water& water) { water.name = name; });
    }
    open_.moveTo(path);
}

bool MainWindow::saveElsewhere() {
    const QString path = askPlace(this, tr("Save the water in another place"));
    if (path.isEmpty()) {
        return false;
    }
    open_.moveTo(path);
    return open_.finishKeeping();
}

bool MainWindow::mayLeave() {
    while (!open_.finishKeeping()) {
        const open_water::Keeper& keeper = open_.keeper();
        QMessageBox box(QMessageBox::Warning, tr("Not kept"),
                        notKeptWords(keeper.unkept(), keeper.whyNot(), false),
                        QMessageBox::NoButton, this);
        QPushButton* elsewhere =
            box.addButton(tr("Save in another place..."), QMessageBox::AcceptRole);
        QPushButton* lose = box.addButton(tr("Lose these changes"), QMessageBox::DestructiveRole);
        box.setDefaultButton(elsewhere);
        box.setEscapeButton(box.addButton(tr("Stay"), QMessageBox::RejectRole));
        box.exec();
        if (box.clickedButton() == lose) {
            open_.letUnkeptGo();
            return true;
        }
        if (box.clickedButton() != elsewhere) {
            return false;
        }
        if (saveElsewhere()) {
            return true;
        }
    }
    return true;
}

void MainWindow::goBack(const QString& path, const QString& why) {
    store::Copies copies = copyTaker_.copies();
    GoBack dialog(copies, path, why, days::inksOf(preferences_.theme()), this);
    dialog.exec();
    if (dialog.wantsRescue()) {
        rescue(path);
        return;
    }
    const auto chosen = dialog.chosen();
    if (!chosen) {
        return;
    }
    const auto now =
        std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    if (const auto gone = copies.goBack(*chosen, path.toStdString(), now); !gone) {
        bottom_->say(wording::Tongue::sentence(gone.error()), true);
        return;
    }
    openWater(path);
}

void MainWindow::offerCopies(const base::Error& error) {
    // A water that is open is at work; its file is not changed behind its back.
    if (error.kind != base::ErrorKind::damagedWater || open_.isOpen()) {
        return;
    }
    const QString path = QString::fromStdString(error.where);
    goBack(path, tr("%1 is damaged: %2.").arg(path, wording::Tongue::ofCore(error.what)));
}

void MainWindow::rescue(const QString& path) {
    const QString to = askPlace(this, tr("Rescue what can be read into a new file"));
    if (to.isEmpty()) {
        return;
    }
    open_.opening().start<store::Rescue>(
        tr("Reading what can be read"),
        [from = path.toStdString(), to = to.toStdString()](base::Progress& progress) {
            return store::rescue(from, to, progress);
        },
        [this, to](const base::Result<store::Rescue>& rescued) {
            if (!rescued) {
                bottom_->say(wording::Tongue::sentence(rescued.error()), true);
                return;
            }
            openWater(to);
            tellLost(*rescued);
        });
}

void MainWindow::tellLost(const store::Rescue& rescued) {
    QStringList lost;
    for (const std::string& each : rescued.lost) {
        lost.push_back(wording::oneLine(wording::Tongue::ofCore(each)));
    }
    QMessageBox box(QMessageBox::Warning, tr("Rescued"),
                    lost.isEmpty()
                        ? tr("Everything that you brought in could be read. The map is drawn anew.")
                        : tr("Not everything could be read. What is missing:") +
                              QStringLiteral("\n\n") + lost.join(QLatin1Char('\n')),
                    QMessageBox::Ok, this);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (mayLeave()) {
        keepHowItIsLeft();
        event->accept();
    } else {
        event->ignore();
    }
}

} // namespace window
