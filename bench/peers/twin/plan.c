#include "plan.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void fail(const char *what, const char *one, const char *other) {
    fprintf(stderr, "%s: %s %s\n", what, one, other ? other : "");
    exit(2);
}

static char *copy(const char *text) {
    char *to = malloc(strlen(text) + 1);
    if (!to) {
        fail("no memory", "", NULL);
    }
    return strcpy(to, text);
}

double plan_value(const char *text) {
    char *end;
    const double value = strtod(text, &end);
    if (end == text || *end) {
        fail("not a number", text, NULL);
    }
    return value;
}

static void split(plan_line *line, char *text, int stocks) {
    if (strncmp(text, "sample\t", 7) == 0) {
        line->part[0] = copy("sample");
        line->parts = 1;
        line->values = malloc(sizeof(double) * (size_t)(stocks + 3));
        int count = 0;
        for (char *at = strtok(text + 7, "\t"); at; at = strtok(NULL, "\t")) {
            if (count == stocks + 3) {
                fail("too many values in a sample", "", NULL);
            }
            line->values[count++] = plan_value(at);
        }
        if (count != stocks + 3) {
            fail("too few values in a sample", "", NULL);
        }
        return;
    }
    for (char *at = strtok(text, "\t"); at && line->parts < 8; at = strtok(NULL, "\t")) {
        line->part[line->parts++] = copy(at);
    }
}

plan *plan_read(const char *file) {
    FILE *in = fopen(file, "r");
    if (!in) {
        fail("cannot read", file, NULL);
    }
    plan *p = calloc(1, sizeof *p);
    static char text[1 << 16];
    size_t room = 0;
    while (fgets(text, sizeof text, in)) {
        text[strcspn(text, "\r\n")] = 0;
        if (p->count == room) {
            room = room ? 2 * room : 1024;
            p->lines = realloc(p->lines, room * sizeof *p->lines);
        }
        plan_line *line = &p->lines[p->count++];
        memset(line, 0, sizeof *line);
        split(line, text, p->stocks);
        p->stocks += line->parts > 0 && strcmp(line->part[0], "stock") == 0;
    }
    fclose(in);
    return p;
}

static int begins(const plan_line *line, const char *kind, const char *first, const char *second) {
    return line->parts > 1 && strcmp(line->part[0], kind) == 0 && strcmp(line->part[1], first) == 0
        && (!second || (line->parts > 2 && strcmp(line->part[2], second) == 0));
}

const plan_line *plan_find(const plan *p, const char *kind, const char *first, const char *second) {
    for (size_t i = 0; i < p->count; i++) {
        if (begins(&p->lines[i], kind, first, second)) {
            return &p->lines[i];
        }
    }
    fail("the plan says nothing of", first, second);
    return NULL;
}

double plan_number(const plan *p, const char *kind, const char *name) {
    return plan_value(plan_find(p, kind, name, NULL)->part[2]);
}

static int is_of_mechanism(const plan_line *line) {
    return line->parts > 0 && (strcmp(line->part[0], "of") == 0 || strcmp(line->part[0], "at") == 0);
}

size_t plan_next_mechanism(const plan *p, const char *class, const char *path, const char *body, size_t after) {
    for (size_t i = after + 1; i < p->count; i++) {
        if (begins(&p->lines[i], "mechanism", class, NULL)) {
            for (size_t k = i + 1; k < p->count && is_of_mechanism(&p->lines[k]); k++) {
                if (begins(&p->lines[k], "at", path, body)) {
                    return i;
                }
            }
        }
    }
    return 0;
}

size_t plan_mechanism(const plan *p, const char *class, const char *path, const char *body) {
    const size_t found = plan_next_mechanism(p, class, path, body, 0);
    if (!found) {
        fail("the plan has no mechanism", class, body);
    }
    return found;
}

static const plan_line *line_of(const plan *p, size_t mechanism, const char *path) {
    for (size_t k = mechanism + 1; k < p->count && is_of_mechanism(&p->lines[k]); k++) {
        if (begins(&p->lines[k], "of", path, NULL)) {
            return &p->lines[k];
        }
    }
    return NULL;
}

int plan_has(const plan *p, size_t mechanism, const char *path) {
    return line_of(p, mechanism, path) != NULL;
}

double plan_of(const plan *p, size_t mechanism, const char *path) {
    const plan_line *line = line_of(p, mechanism, path);
    if (!line) {
        fail("the mechanism has no", path, p->lines[mechanism].part[1]);
        return 0;
    }
    return plan_value(line->part[2]);
}

int plan_stock(const plan *p, const char *stock, const char *body) {
    int number = 0;
    for (size_t i = 0; i < p->count; i++) {
        if (p->lines[i].parts > 0 && strcmp(p->lines[i].part[0], "stock") == 0) {
            if (begins(&p->lines[i], "stock", stock, body)) {
                return number;
            }
            number++;
        }
    }
    return -1;
}
