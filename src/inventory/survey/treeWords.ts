/** Words for a tree before its number, and for "number", as parts of patterns: "Tree No. 12", "Baum 3", "árbol n.º 4". */
export const treeWord = '(?:tree|baum|arbre|[aá]rbol)'
export const numberWord = '(?:#|n[or°º]\\.?|nr\\.?)'
