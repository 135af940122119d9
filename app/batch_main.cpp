// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/command.h"

int main(int argc, char** argv) {
    return batch::runCommand(argc, argv);
}
