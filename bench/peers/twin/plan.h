/* The numbers of a plan, as org.tidewright.bench.TwinExport writes them: one line for each, its parts parted by tabs. */
#ifndef PLAN_H
#define PLAN_H

#include <stddef.h>

typedef struct {
    char *part[8];
    int parts;
    double *values; /* of a sample: time, pH, room's carbon dioxide in atm, and the stocks in the order of their lines */
} plan_line;

typedef struct {
    plan_line *lines;
    size_t count;
    int stocks; /* lines that begin with "stock" */
} plan;

plan *plan_read(const char *file);

/* The line that begins with these parts, or the end of the program where there is none. */
const plan_line *plan_find(const plan *p, const char *kind, const char *first, const char *second);

double plan_number(const plan *p, const char *kind, const char *name);

/* The line of a mechanism of a class one of whose bodies, at a path, has a name. */
size_t plan_mechanism(const plan *p, const char *class, const char *path, const char *body);

/* The next after a line, for those of which there are many alike; 0 where there is none. */
size_t plan_next_mechanism(const plan *p, const char *class, const char *path, const char *body, size_t after);

/* A number of the mechanism at a line. */
int plan_has(const plan *p, size_t mechanism, const char *path);
double plan_of(const plan *p, size_t mechanism, const char *path);

/* The number among the stock lines, -1 where there is none. */
int plan_stock(const plan *p, const char *stock, const char *body);

double plan_value(const char *text);

#endif
