/**
 * The workshop's own data: owners, machines on the register, jobs and what happened on them, parts, photos. One SQLite
 * file in one folder.
 *
 * <p>{@link wetside.shop.Shop} opens it and is the only way to it: {@code read} asks, {@code change} is one transaction, and
 * what it returned is on the disk. Each other class speaks for one table or two. Migrations are {@code V*.sql} in the
 * resources; a file newer than the program is refused.
 *
 * <p>Not here: pages, diagnosis, what a machine does.
 */
package wetside.shop;
